package holdcurve.ui.window.repaircheck;

import holdcurve.advice.check.HoldTable;
import holdcurve.advice.check.RepairCheck;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.record.job.RankableTests;
import holdcurve.ui.window.plot.SeveralHoldsPanel;
import java.util.List;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;

/** One tab a checked hold; before the check, the last hold as it was read. */
final class CheckedHolds extends TabPane {
  private final RepairCheckModel model;

  CheckedHolds(RepairCheckModel model) {
    this.model = model;
    setTabClosingPolicy(TabClosingPolicy.UNAVAILABLE);
    model.checkProperty().addListener((property, before, now) -> update());
    model.jobProperty().addListener((property, before, now) -> update());
    model.unit().addListener((property, before, now) -> update());
    update();
  }

  private void update() {
    RepairCheck check = model.checkProperty().get();
    Job job = model.jobProperty().get();
    getTabs().clear();
    if (check != null) {
      List<HoldTest> tests = check.timeline().checked().tests();
      for (int i = 0; i < tests.size(); i++) {
        CheckedHold panel = new CheckedHold();
        panel.show(HoldTable.of(check, i), model.unit().getValue());
        getTabs().add(new Tab(tests.get(i).id(), panel));
      }
    } else if (job != null) {
      List<HoldTest> tests = RankableTests.of(job).tests();
      if (!tests.isEmpty()) {
        HoldTest last = tests.get(tests.size() - 1);
        CheckedHold panel = new CheckedHold();
        panel.show(last, model.unit().getValue());
        getTabs().add(new Tab(last.id(), panel));
      }
    }
    model
        .beforeAndAfter()
        .ifPresent(
            both -> {
              SeveralHoldsPanel panel = new SeveralHoldsPanel();
              panel.show(both);
              Tab tab = new Tab("Before and after", panel);
              tab.setId("before-and-after");
              getTabs().add(tab);
            });
  }
}
