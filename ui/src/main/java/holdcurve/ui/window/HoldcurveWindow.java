package holdcurve.ui.window;

import holdcurve.advice.check.RepairCheckService;
import holdcurve.advice.check.RepairChecker;
import holdcurve.fault.FaultCatalogue;
import holdcurve.file.CaseShelf;
import holdcurve.inference.ranking.Ranker;
import holdcurve.inference.ranking.RankingService;
import holdcurve.training.RankedEvidence;
import holdcurve.ui.theme.Appearance;
import holdcurve.ui.window.benchsheet.BenchSheetModel;
import holdcurve.ui.window.benchsheet.BenchSheetPage;
import holdcurve.ui.window.benchsheet.DropTestModel;
import holdcurve.ui.window.cases.CasesModel;
import holdcurve.ui.window.cases.CasesPage;
import holdcurve.ui.window.circuit.CircuitModel;
import holdcurve.ui.window.circuit.CircuitPage;
import holdcurve.ui.window.frame.Desk;
import holdcurve.ui.window.frame.FileDialogs;
import holdcurve.ui.window.frame.Page;
import holdcurve.ui.window.frame.WindowView;
import holdcurve.ui.window.holdtests.HoldTestsModel;
import holdcurve.ui.window.holdtests.HoldTestsPage;
import holdcurve.ui.window.job.FaultsModel;
import holdcurve.ui.window.job.OpenJobModel;
import holdcurve.ui.window.practice.ExerciseDraft;
import holdcurve.ui.window.practice.PracticeModel;
import holdcurve.ui.window.practice.PracticePage;
import holdcurve.ui.window.repaircheck.RepairCheckModel;
import holdcurve.ui.window.repaircheck.RepairCheckPage;
import holdcurve.ui.window.suspects.NextTestModel;
import holdcurve.ui.window.suspects.SuspectsModel;
import holdcurve.ui.window.suspects.SuspectsPage;
import holdcurve.ui.window.whatif.WhatIfModel;
import holdcurve.ui.window.whatif.WhatIfPage;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleSupplier;
import java.util.function.Function;
import javafx.geometry.Rectangle2D;
import javafx.scene.Scene;
import javafx.stage.Screen;
import javafx.stage.Stage;

/** Puts model, pages and looks together on a stage. This is where a new page is added. */
public final class HoldcurveWindow {
  /** Everything fits from here on [px]. */
  private static final double WIDTH = 1280;

  private static final double HEIGHT = 720;

  /** Share of the screen that a new window takes where there is room [-]. */
  private static final double SHARE = 0.85;

  private HoldcurveWindow() {}

  /**
   * Fills a stage; showing it is up to the caller.
   *
   * @param dialogs made for the window that owns them
   */
  public static void fill(
      Stage stage, OpenJobModel model, Appearance looks, Function<Stage, FileDialogs> dialogs) {
    fill(stage, Desk.alone(model, looks, dialogs.apply(stage)));
  }

  /** Likewise, with everything else of a desk. */
  static Rehearsal fill(Stage stage, Desk desk) {
    return fill(stage, desk, () -> System.nanoTime() / 1e9);
  }

  /**
   * Likewise, with a clock for the stopwatch.
   *
   * @param clock any steady clock [s]
   * @return to be run once the stage is shown, for a quick window from then on
   */
  static Rehearsal fill(Stage stage, Desk desk, DoubleSupplier clock) {
    List<Page> pages = pages(desk, clock);
    WindowView view = new WindowView(desk, pages, stage::close);
    Rectangle2D screen = Screen.getPrimary().getVisualBounds();
    Scene scene =
        new Scene(
            view.root(),
            Math.max(WIDTH, SHARE * screen.getWidth()),
            Math.max(HEIGHT, SHARE * screen.getHeight()));
    desk.looks().dress(scene);
    stage.setScene(scene);
    stage.setMaximized(screen.getWidth() <= WIDTH || screen.getHeight() <= HEIGHT);
    stage.setMinWidth(800);
    stage.setMinHeight(560);
    stage.titleProperty().bind(view.windowTitle());
    stage.setOnCloseRequest(
        event -> {
          event.consume();
          view.quit();
        });
    return new Rehearsal(pages, scene);
  }

  private static List<Page> pages(Desk desk, DoubleSupplier clock) {
    return pageMakers(clock).stream().map(maker -> maker.apply(desk)).toList();
  }

  /** In the order of the work. */
  static List<Function<Desk, Page>> pageMakers(DoubleSupplier clock) {
    return List.of(
        desk ->
            new CircuitPage(
                new CircuitModel(desk.jobs(), desk.faults()),
                () -> {
                  desk.page().set("Hold tests");
                  desk.jobs().startHold();
                }),
        desk -> new HoldTestsPage(desk, new HoldTestsModel(desk.jobs(), clock, LocalDate::now)),
        desk ->
            new SuspectsPage(new SuspectsModel(desk.jobs()), new NextTestModel(desk.jobs()), desk),
        desk ->
            new BenchSheetPage(
                new BenchSheetModel(desk.jobs(), LocalDate::now),
                new DropTestModel(desk.jobs(), LocalDate::now),
                desk),
        HoldcurveWindow::whatIf,
        desk ->
            new RepairCheckPage(
                new RepairCheckModel(
                    desk.jobs(), () -> checker(desk), LocalDate::now, desk.faults()::parts),
                () -> desk.page().set("Hold tests"),
                desk.dialogs()::show),
        desk ->
            new CasesPage(
                new CasesModel(
                    desk.jobs(), desk.faults(), CaseShelf.usual(), () -> service(desk.faults())),
                desk),
        desk ->
            new PracticePage(
                new PracticeModel(
                    desk,
                    desk.faults()::catalogue,
                    known -> new RankedEvidence(new RankingService(known), known)),
                new ExerciseDraft(desk.jobs().work(), desk.faults()::catalogue, new Random()),
                desk.dialogs(),
                desk.jobs().pressures()));
  }

  /**
   * Ranks by the fault rates that the user chose in the case book, and from what earlier jobs of
   * the same car taught.
   *
   * @param fileOrNull of the job that is ranked
   */
  static Ranker ranker(FaultsModel faults, Path fileOrNull) {
    return new CarRanker(service(faults), fileOrNull);
  }

  private static RankingService service(FaultsModel faults) {
    FaultCatalogue catalogue = faults.catalogue();
    return new RankingService(catalogue, CaseShelf.usual().priors(catalogue));
  }

  private static RepairChecker checker(Desk desk) {
    CarRanker ranker = new CarRanker(service(desk.faults()), desk.jobs().fileProperty().get());
    return (job, test, seed, progress) ->
        new RepairCheckService(ranker.service(job, progress), desk.faults().catalogue())
            .check(job, test, seed, progress);
  }

  private static Page whatIf(Desk desk) {
    WhatIfModel model = new WhatIfModel(desk.jobs(), desk.faults()::catalogue);
    desk.faults().folderProperty().addListener((property, before, now) -> model.listFaults());
    return new WhatIfPage(model, desk);
  }
}
