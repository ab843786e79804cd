package holdcurve.ui.window.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.advice.plan.CostPlan;
import holdcurve.fault.FaultCatalogue;
import holdcurve.file.JobReader;
import holdcurve.ui.window.BelievedRanking;
import holdcurve.ui.window.Jobs;
import holdcurve.ui.window.job.OpenJobModel;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Prices and the order that costs least, without a screen. */
class PartsModelTest {
  @TempDir Path folder;

  private final OpenJobModel jobs =
      new OpenJobModel(JobReader::read, BelievedRanking::new, Runnable::run, Runnable::run);
  private final PartsModel model = new WhatIfModel(jobs, FaultCatalogue::load).parts();

  @BeforeEach
  void open() {
    jobs.open(Jobs.TWO_HOLDS);
  }

  private Path list() throws IOException {
    return Files.writeString(
        folder.resolve("prices.csv"),
        "name,part,cures,price,minutes\n"
            + "new check valve,check-valve,,45 crowns,45\n"
            + "injectors resealed,injectors,,180 crowns,120\n");
  }

  @Test
  void aPriceListTakesThePlaceOfWhatIsSuspected() throws IOException {
    assertEquals(3, model.remedies().size());
    model.open(list());
    assertEquals("", jobs.problemProperty().get());
    assertEquals(2, model.remedies().size());
    assertEquals("crowns", model.currencyProperty().get());
    assertEquals(45, model.remedies().get(0).priceProperty().get());
    assertTrue(model.remedies().get(0).chance() > model.unrepairedProperty().get());
  }

  @Test
  void anUnknownPartIsSaidAndTheListStays() throws IOException {
    Path wrong =
        Files.writeString(
            folder.resolve("wrong.csv"), "name,part,price\nnew rotor,flux-rotor,10\n");
    model.open(wrong);
    assertTrue(jobs.problemProperty().get().contains("flux-rotor"), jobs.problemProperty().get());
    assertEquals(3, model.remedies().size());
  }

  /**
   * With the dear repair twenty times as likely to be needed for nothing, the cheap one is first.
   */
  @Test
  void theOrderFollowsThePrices() throws IOException {
    model.open(list());
    model.order();
    CostPlan cheap = model.orderProperty().get();
    assertNotNull(cheap, jobs.problemProperty().get());
    assertEquals("crowns", cheap.currency());
    model.remedies().get(0).priceProperty().set(4500);
    assertNull(model.orderProperty().get(), "an order for other prices is none");
    model.order();
    assertTrue(model.orderProperty().get().expectedCost() > cheap.expectedCost());
  }

  @Test
  void savedPricesAreReadAgain() throws IOException {
    model.open(list());
    model.remedies().get(1).priceProperty().set(99.5);
    model.perHourProperty().set(60);
    Path saved = folder.resolve("mine.json");
    model.save(saved);
    model.remedies().get(1).priceProperty().set(1);
    model.perHourProperty().set(0);
    model.open(saved);
    assertEquals(99.5, model.remedies().get(1).priceProperty().get());
    assertEquals(60, model.perHourProperty().get());
  }

  @Test
  void withoutARankingItSaysWhatItTakes() {
    OpenJobModel unranked =
        new OpenJobModel(
            JobReader::read,
            () -> {
              throw new IllegalStateException("not ranked");
            },
            Runnable::run,
            Runnable::run);
    PartsModel parts = new WhatIfModel(unranked, FaultCatalogue::load).parts();
    unranked.open(Jobs.TWO_HOLDS);
    parts.order();
    assertTrue(unranked.problemProperty().get().contains("needs a ranking"));
  }
}
