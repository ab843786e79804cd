package holdcurve.physics.ode;

import static holdcurve.physics.ode.RosenbrockTableau.row;

import holdcurve.physics.ode.RosenbrockTableau.Orders;
import holdcurve.physics.ode.RosenbrockTableau.Stage;
import java.util.List;

/**
 * Stiffly accurate, order 4(3), six stages, made to keep its order on algebraic parts and on lines
 * cut into pieces.
 *
 * <p>Source: Steinebach, Improvement of Rosenbrock-Wanner method RODASP, in: Progress in
 * Differential-Algebraic Equations II, Springer 2020, pp. 165-184.
 */
final class Rodas4P2 {
  static final RosenbrockTableau TABLE =
      new RosenbrockTableau(
          "RODAS4P2",
          "Steinebach, Improvement of Rosenbrock-Wanner method RODASP, "
              + "in: Progress in Differential-Algebraic Equations II, Springer 2020, pp. "
              + "165-184",
          new Orders(4, 3, 3),
          0.25,
          List.of(
              new Stage(0.0, 0.25, row(), row()),
              new Stage(0.75, -0.5, row(3.0), row(-12.0)),
              new Stage(
                  0.321448134013046,
                  -0.189532918363016,
                  row(0.906377755268814, -0.189707390391685),
                  row(-6.354581592719008, 0.338972550544623)),
              new Stage(
                  0.519745732277726,
                  0.085612108792769,
                  row(3.758617027739064, 1.161741776019525, -0.849258085312803),
                  row(-8.575016317114033, -7.606483992117508, 12.22499765012482)),
              new Stage(
                  1.0,
                  0.0,
                  row(7.089566927282776, 4.573591406461604, -8.423496976860259, -0.959280113459775),
                  row(
                      -5.888975457523102,
                      -8.15739661784182,
                      24.805546872612922,
                      12.79040151279698)),
              new Stage(
                  1.0,
                  0.0,
                  row(
                      7.089566927282776,
                      4.573591406461604,
                      -8.423496976860259,
                      -0.959280113459775,
                      1.0),
                  row(
                      -4.408651676063871,
                      -6.692003137674639,
                      24.625568527593117,
                      16.627521966636085,
                      -5.714285714285718))),
          row(
              7.089566927282776,
              4.573591406461604,
              -8.423496976860259,
              -0.959280113459775,
              1.0,
              1.0),
          row(0.0, 0.0, 0.0, 0.0, 0.0, 1.0),
          List.of(
              row(
                  -5.323528268423303,
                  -10.042123754867493,
                  17.175254928256965,
                  -5.079931171878093,
                  -0.016185991706112,
                  0.0),
              row(
                  6.984505741529879,
                  6.914061169603662,
                  -0.849178943070653,
                  18.104410789349338,
                  -3.516963011559032,
                  0.0)));

  private Rodas4P2() {}
}
