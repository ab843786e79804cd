package holdcurve.ui.window.repaircheck;

import holdcurve.common.message.PartName;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.record.job.RankableTests;
import holdcurve.record.job.Repair;
import holdcurve.ui.window.frame.Texts;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.beans.binding.Bindings;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;

/** What was done to the car so far, in order: holds, and the repairs between them. */
final class TimelineStrip extends FlowPane {
  private final RepairCheckModel model;
  private final ReadOnlyDoubleProperty place;

  /**
   * @param place width of what holds it: known before the steps are laid out
   */
  TimelineStrip(RepairCheckModel model, ReadOnlyDoubleProperty place) {
    this.model = model;
    this.place = place;
    setId("timeline");
    getStyleClass().add("hc-timeline");
    model.jobProperty().addListener((property, before, now) -> show(now));
    show(model.jobProperty().get());
  }

  /** The holds of the job are in the order of the work; a repair stands after the hold it names. */
  private void show(Job job) {
    List<Node> steps = new ArrayList<>();
    if (job != null) {
      List<Repair> left = new ArrayList<>(job.upkeep().repairs());
      for (HoldTest test : RankableTests.of(job).tests()) {
        take(left, repair -> isBefore(repair, test)).forEach(repair -> steps.add(step(repair)));
        steps.add(step(test));
        take(left, repair -> repair.afterTest().equals(test.id()))
            .forEach(repair -> steps.add(step(repair)));
      }
      left.forEach(repair -> steps.add(step(repair)));
    }
    getChildren().setAll(steps);
  }

  private static boolean isBefore(Repair repair, HoldTest test) {
    return repair.afterTest().isEmpty()
        && test.day().filter(day -> day.isAfter(repair.date())).isPresent();
  }

  private static List<Repair> take(List<Repair> from, java.util.function.Predicate<Repair> which) {
    List<Repair> taken = from.stream().filter(which).toList();
    from.removeAll(taken);
    return taken;
  }

  private static Node step(HoldTest test) {
    Label hold = new Label((test.date() + " " + test.id()).strip());
    hold.getStyleClass().addAll("hc-small", "hc-timeline-hold");
    return hold;
  }

  private Node step(Repair repair) {
    String words =
        "Repaired "
            + repair.date()
            + ": "
            + Stream.of(PartName.of(repair.part()), repair.note())
                .filter(word -> !word.isEmpty())
                .collect(Collectors.joining(", "));
    Label label = Texts.words(words, "hc-small", "hc-strong");
    Button remove = new Button("×");
    remove.setAccessibleText("Remove: " + words);
    remove.getStyleClass().add("hc-flat");
    remove.setMinWidth(USE_PREF_SIZE);
    remove.setOnAction(event -> model.removeRepair(repair));
    HBox step = new HBox(label, remove);
    step.getStyleClass().add("hc-timeline-repair");
    step.maxWidthProperty()
        .bind(
            Bindings.createDoubleBinding(
                () -> place.get() - getInsets().getLeft() - getInsets().getRight(),
                place,
                insetsProperty()));
    return step;
  }
}
