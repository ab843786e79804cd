/* The hold problem solved by SUNDIALS CVODE: BDF, Newton, dense direct solver, analytic Jacobian.
 * Equations and values are those of HoldBenchmark.java and hold-problem-reference.json.
 * Prints a line for each variant and tolerance: variant, rtol, fastest time [us of CPU], states at
 * the eight output times after 0. Output by CVODE's own interpolation, restart at the switch. */
#include <cvode/cvode.h>
#include <math.h>
#include <nvector/nvector_serial.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sunlinsol/sunlinsol_dense.h>
#include <sunmatrix/sunmatrix_dense.h>
#include <time.h>

enum { N = 9, OUTPUTS = 8 };

static const double FLOOR[N] = {1e3, 1e3, 1e3, 1e-9, 1e-9, 1e-9, 1e-9, 1e-2, 1e3};
static const double TIMES[OUTPUTS] = {10, 30, 60, 120, 300, 600, 900, 1800};
static const double SWITCH = 20;

static const double P_ATM = 101325, K_T = 7.5e8, ALPHA = 1.1e-3;
static const double V[3] = {2.0e-4, 2.2e-4, 0.8e-4}, L[3] = {1.6, 1.0, 0.6}, C_HOSE = 3.5e-12;
static const double V_D = 1.2e-6, P_D = 1.8e5, W_D = 0.9e5, V_A = 3.0e-6;
static const double CREEP[4] = {4.0e-13, 6.0e-13, 2.5e-13, 4.0e-13}, TAU[4] = {25, 420, 18, 600};
static const double TAU_TH = 1500, TAU_G = 0.5;
static const double K_H = 1.6e-7, DP_H = 1e3, K_I = 5.2e-12, DP_I = 1e4;
static const double G_C = 8.5e-15, G_J = 4.0e-15, G_S = 8.5e-15, G_P = 1.0e-15;
static const double K_R = 5.0e-12, P_SET = 2.6e5, W_R = 3.0e3, DP_R = 2.0e3;
static const double K_O = 2.0e-7, DP_O = 2.0e3, Q_0 = 3.3e-5, P_ST = 6.0e5;

static double orifice(double d, double l) { return d / sqrt(sqrt(d * d + l * l)); }

static double orifice_slope(double d, double l) {
  double sum = d * d + l * l;
  return (0.5 * d * d + l * l) / (sum * sqrt(sqrt(sum)));
}

static double softplus(double z) { return z > 0 ? z + log1p(exp(-z)) : log1p(exp(z)); }

static double stiff(int i) { return V[i] / K_T + C_HOSE * L[i]; }

static double c1_at(double p) {
  double z = (p - P_D) / W_D, wide = 1 + z * z;
  return stiff(0) + V_D / (2 * W_D) / (wide * sqrt(wide));
}

static double c1_slope(double p) {
  double z = (p - P_D) / W_D, wide = 1 + z * z;
  return -3 * z * V_D / (2 * W_D) / (wide * wide * sqrt(wide)) / W_D;
}

static double c2_at(double p) { return stiff(1) + V_A * P_ATM / ((P_ATM + p) * (P_ATM + p)); }

static double c2_slope(double p) {
  double a = P_ATM + p;
  return -2 * V_A * P_ATM / (a * a * a);
}

static int rates(realtype t, N_Vector yv, N_Vector fv, void *data) {
  const double *y = NV_DATA_S(yv);
  double *f = NV_DATA_S(fv);
  int prime = *(int *)data;
  double p1 = y[0], p2 = y[1], p3 = y[2];
  (void)t;
  for (int k = 0; k < 4; k++) f[3 + k] = (CREEP[k] * (k < 2 ? p1 : p2) - y[3 + k]) / TAU[k];
  f[7] = -y[7] / TAU_TH;
  f[8] = (p2 - y[8]) / TAU_G;
  double q12 = K_H * orifice(p1 - p2, DP_H);
  double qr = K_R * W_R * softplus((p2 - P_SET) / W_R) * orifice(p2 - p3, DP_R) + G_S * (p2 - p3);
  double qo = prime ? K_O * orifice(p3, DP_O) : G_P * p3;
  double qp = prime ? Q_0 * (1 - (p1 / P_ST) * (p1 / P_ST)) : 0;
  f[0] = (qp - q12 - G_C * p1 - f[3] - f[4] + ALPHA * V[0] * f[7]) / c1_at(p1);
  f[1] = (q12 - K_I * orifice(p2, DP_I) - G_J * p2 - qr - f[5] - f[6] + ALPHA * V[1] * f[7]) / c2_at(p2);
  f[2] = (qr - qo + ALPHA * V[2] * f[7]) / stiff(2);
  return 0;
}

static int jacobian(realtype t, N_Vector yv, N_Vector fv, SUNMatrix m, void *data, N_Vector a,
                    N_Vector b, N_Vector c) {
  const double *y = NV_DATA_S(yv), *f = NV_DATA_S(fv);
  int prime = *(int *)data;
  double p1 = y[0], p2 = y[1], p3 = y[2];
  (void)t, (void)a, (void)b, (void)c;
#define J(i, j) SM_ELEMENT_D(m, i, j)
  SUNMatZero(m);
  for (int k = 0; k < 4; k++) {
    J(3 + k, k / 2) = CREEP[k] / TAU[k];
    J(3 + k, 3 + k) = -1 / TAU[k];
  }
  J(7, 7) = -1 / TAU_TH;
  J(8, 1) = 1 / TAU_G;
  J(8, 8) = -1 / TAU_G;
  double s12 = K_H * orifice_slope(p1 - p2, DP_H);
  double pump = prime ? -2 * Q_0 * p1 / (P_ST * P_ST) : 0;
  double c1 = c1_at(p1), c2 = c2_at(p2), c3 = stiff(2);
  J(0, 0) = (pump - s12 - G_C - CREEP[0] / TAU[0] - CREEP[1] / TAU[1]) / c1 - f[0] * c1_slope(p1) / c1;
  J(0, 1) = s12 / c1;
  J(0, 3) = 1 / (TAU[0] * c1);
  J(0, 4) = 1 / (TAU[1] * c1);
  J(0, 7) = -ALPHA * V[0] / (TAU_TH * c1);
  double z = (p2 - P_SET) / W_R;
  double by3 = -K_R * W_R * softplus(z) * orifice_slope(p2 - p3, DP_R) - G_S;
  double by2 = K_R / (1 + exp(-z)) * orifice(p2 - p3, DP_R) - by3;
  J(1, 0) = s12 / c2;
  J(1, 1) = (-s12 - K_I * orifice_slope(p2, DP_I) - G_J - by2 - CREEP[2] / TAU[2] - CREEP[3] / TAU[3]) / c2
            - f[1] * c2_slope(p2) / c2;
  J(1, 2) = -by3 / c2;
  J(1, 5) = 1 / (TAU[2] * c2);
  J(1, 6) = 1 / (TAU[3] * c2);
  J(1, 7) = -ALPHA * V[1] / (TAU_TH * c2);
  J(2, 1) = by2 / c3;
  J(2, 2) = (by3 - (prime ? K_O * orifice_slope(p3, DP_O) : G_P)) / c3;
  J(2, 7) = -ALPHA * V[2] / (TAU_TH * c3);
  return 0;
}

struct solver {
  void *cvode;
  N_Vector y;
  int prime;
};

static void leave(const char *what) {
  fprintf(stderr, "CVODE failed in %s\n", what);
  exit(1);
}

static void pass(struct solver *s, int from, int to, double out[OUTPUTS][N]) {
  double t;
  for (int k = from; k < to; k++) {
    if (CVode(s->cvode, TIMES[k], s->y, &t, CV_NORMAL) < 0) leave("a step");
    memcpy(out[k], NV_DATA_S(s->y), sizeof out[k]);
  }
}

static void solve(struct solver *s, char variant, double out[OUTPUTS][N]) {
  double *y = NV_DATA_S(s->y), t;
  memset(y, 0, N * sizeof *y);
  y[7] = 1.5;
  if (variant == 'A') {
    y[0] = y[1] = y[8] = 2.5e5;
    y[2] = 0.3e5;
  }
  s->prime = variant == 'B';
  CVodeReInit(s->cvode, 0, s->y);
  if (variant == 'B') {
    CVodeSetStopTime(s->cvode, SWITCH);
    pass(s, 0, 1, out);
    if (CVode(s->cvode, SWITCH, s->y, &t, CV_NORMAL) < 0) leave("a step");
    s->prime = 0;
    CVodeReInit(s->cvode, SWITCH, s->y);
  }
  CVodeSetStopTime(s->cvode, TIMES[OUTPUTS - 1]);
  pass(s, variant == 'B' ? 1 : 0, OUTPUTS, out);
}

static double now(void) {
  struct timespec t;
  clock_gettime(CLOCK_THREAD_CPUTIME_ID, &t);
  return t.tv_sec * 1e6 + t.tv_nsec * 1e-3;
}

static double fastest(struct solver *s, char variant, double out[OUTPUTS][N]) {
  double best = 1e300;
  for (int repeat = 0; repeat < 31; repeat++) {
    double start = now();
    for (int i = 0; i < 3; i++) solve(s, variant, out);
    double took = (now() - start) / 3;
    if (took < best) best = took;
  }
  return best;
}

int main(int argc, char **argv) {
  SUNContext context;
  SUNContext_Create(NULL, &context);
  struct solver s;
  s.y = N_VNew_Serial(N, context);
  s.prime = 0;
  N_VConst(0, s.y);
  N_Vector allowed = N_VNew_Serial(N, context);
  SUNMatrix matrix = SUNDenseMatrix(N, N, context);
  SUNLinearSolver linear = SUNLinSol_Dense(s.y, matrix, context);
  s.cvode = CVodeCreate(CV_BDF, context);
  CVodeInit(s.cvode, rates, 0, s.y);
  N_VConst(1, allowed);
  CVodeSVtolerances(s.cvode, 1e-4, allowed);
  CVodeSetLinearSolver(s.cvode, linear, matrix);
  CVodeSetJacFn(s.cvode, jacobian);
  CVodeSetUserData(s.cvode, &s.prime);
  CVodeSetMaxNumSteps(s.cvode, 1000000);
  for (int i = 1; i < argc; i++) {
    double rtol = atof(argv[i]);
    for (int k = 0; k < N; k++) NV_Ith_S(allowed, k) = rtol * FLOOR[k];
    CVodeSVtolerances(s.cvode, rtol, allowed);
    for (char variant = 'A'; variant <= 'B'; variant++) {
      double out[OUTPUTS][N];
      printf("%c %s %.3f", variant, argv[i], fastest(&s, variant, out));
      for (int k = 0; k < OUTPUTS; k++)
        for (int j = 0; j < N; j++) printf(" %.15e", out[k][j]);
      printf("\n");
    }
  }
  return 0;
}
