package holdcurve.ui.command;

import holdcurve.ui.practice.Course;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;

/** The exercises that come with the program, for a terminal. */
final class CourseList {
  private CourseList() {}

  static void print(List<Course.Lesson> lessons, PrintWriter out) {
    out.println("Exercises, from easy to nasty. Begin one with 'holdcurve practise NAME'.");
    for (Course.Lesson lesson : lessons) {
      out.println();
      out.printf(
          Locale.ROOT, "%-22s level %d  %s%n", lesson.name(), lesson.level(), lesson.title());
      Wrapped.print(out, "  ", lesson.story());
    }
    if (lessons.isEmpty()) {
      out.println("None is here: the folder 'scenarios' is missing.");
    }
    out.flush();
  }
}
