package holdcurve.physics.ode;

import static holdcurve.physics.ode.RosenbrockTableau.row;

import holdcurve.physics.ode.RosenbrockTableau.Orders;
import holdcurve.physics.ode.RosenbrockTableau.Stage;
import java.util.List;

/**
 * Stiffly accurate, order 4(3), six stages.
 *
 * <p>Source: Hairer &amp; Wanner, Solving Ordinary Differential Equations II, 2nd ed. 1996, sect.
 * IV.10 and VI.4 (code RODAS, coefficient set 1).
 */
final class Rodas4 {
  static final RosenbrockTableau TABLE =
      new RosenbrockTableau(
          "RODAS4",
          "Hairer & Wanner, Solving Ordinary Differential Equations II, "
              + "2nd ed. 1996, sect. IV.10 and VI.4 (code RODAS, coefficient set 1)",
          new Orders(4, 3, 3),
          0.25,
          List.of(
              new Stage(0.0, 0.25, row(), row()),
              new Stage(0.386, -0.1043, row(1.544), row(-5.6688)),
              new Stage(
                  0.21,
                  0.1035,
                  row(0.9466785280815826, 0.2557011698983284),
                  row(-2.430093356833875, -0.2063599157091915)),
              new Stage(
                  0.63,
                  -0.0362,
                  row(3.314825187068521, 2.896124015972201, 0.9986419139977817),
                  row(-0.1073529058151375, -9.594562251023355, -20.47028614809616)),
              new Stage(
                  1.0,
                  0.0,
                  row(1.221224509226641, 6.019134481288629, 12.53708332932087, -0.687886036105895),
                  row(7.496443313967647, -10.24680431464352, -33.99990352819905, 11.7089089320616)),
              new Stage(
                  1.0,
                  0.0,
                  row(
                      1.221224509226641,
                      6.019134481288629,
                      12.53708332932087,
                      -0.687886036105895,
                      1.0),
                  row(
                      8.083246795921522,
                      -7.981132988064893,
                      -31.52159432874371,
                      16.31930543123136,
                      -6.058818238834054))),
          row(
              1.221224509226641,
              6.019134481288629,
              12.53708332932087,
              -0.687886036105895,
              1.0,
              1.0),
          row(0.0, 0.0, 0.0, 0.0, 0.0, 1.0),
          List.of(
              row(
                  10.12623508344586,
                  -7.487995877610167,
                  -34.80091861555747,
                  -7.992771707568823,
                  1.025137723295662,
                  0.0),
              row(
                  -0.6762803392801253,
                  6.087714651680015,
                  16.43084320892478,
                  24.76722511418386,
                  -6.594389125716872,
                  0.0)));

  private Rodas4() {}
}
