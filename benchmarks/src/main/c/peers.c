/* SPDX-License-Identifier: Apache-2.0 */
/*
 * Problems P1, P1b, P2 and P3 by CVODE and ARKODE, and the floor of a table query, as peers of the library.
 *
 * Usage: peers [quick] p1|p1b|p2|p3 ...
 * Prints one line per tool, as the benchmarks' own processes do: MEASURED, job, median, least, most [s], bytes, setting, error; and lines
 * REFERENCE, name, value by which the caller sees that both solve the same problem. Before a tool is timed it takes the loosest tolerance
 * of the grid 10^(-j/5) that keeps the error allowed, as do so many tighter ones. Times are processor time of the thread.
 */
#define _GNU_SOURCE
#include <arkode/arkode_arkstep.h>
#include <arkode/arkode_erkstep.h>
#include <cvode/cvode.h>
#include <math.h>
#include <nvector/nvector_serial.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sundials/sundials_version.h>
#include <sunlinsol/sunlinsol_band.h>
#include <sunlinsol/sunlinsol_dense.h>
#include <sunmatrix/sunmatrix_band.h>
#include <sunmatrix/sunmatrix_dense.h>
#include <time.h>

#define MOST_STEPS 10000000L
#define MOST_SAMPLES 9

static SUNContext context;
static int quick;

/* ---- The problems ---- */

#define ZERO_C 273.15
#define RADIATING (0.9 * 5.670374419e-8 * 0.062)

static double by_prandtl(double prandtl) {
    return pow(1 + pow(0.492 / prandtl, 9.0 / 16), 8.0 / 27);
}

static double inside_watts(double liquid, double glass) {
    double film = 0.5 * (liquid + glass);
    double conductivity = 0.50 + 1.1e-3 * film;
    double viscosity = 2.9e-6 - 9.5e-8 * film + 1.3e-9 * film * film;
    double diffusivity = conductivity / 4.0e6;
    double drive = liquid - glass;
    double rayleigh = 9.81 * (1.2e-4 + 8e-6 * film) * fabs(drive) * (0.20 * 0.20 * 0.20) / (viscosity * diffusivity);
    double root = 0.825 + 0.387 * pow(rayleigh, 1.0 / 6) / by_prandtl(viscosity / diffusivity);
    return conductivity * root * root / 0.20 * 0.046 * drive;
}

static double air_by_prandtl;

static double outside_watts(double glass, double air) {
    double film = 0.5 * (glass + air);
    double viscosity = 1.335e-5 + 9e-8 * film;
    double conductivity = 0.02436 + 7.2e-5 * film;
    double drive = glass - air;
    double rayleigh =
        9.81 / (ZERO_C + film) * fabs(drive) * (0.24 * 0.24 * 0.24) * 0.711 / (viscosity * viscosity);
    double root = 0.825 + 0.387 * pow(rayleigh, 1.0 / 6) / air_by_prandtl;
    double g2 = (glass + ZERO_C) * (glass + ZERO_C);
    double a2 = (air + ZERO_C) * (air + ZERO_C);
    return conductivity * root * root / 0.24 * 0.062 * drive + RADIATING * (g2 * g2 - a2 * a2);
}

typedef struct Problem {
    int n;               /* number of components */
    int band;            /* half bandwidth of the derivatives; 0 if dense or none is needed */
    CVRhsFn rates;       /* also fits ARKODE */
    CVLsJacFn slopes;    /* NULL: differences */
    double start, air;   /* [degC] */
    double wanted;       /* component 0 falls to this, if falls */
    int falls;
    double end;          /* [s] */
    double swing;        /* P2: swing of the edge [K] */
    const double *capacity, *conductance;
} Problem;

static int p1_rates(realtype t, N_Vector y, N_Vector out, void *data) {
    Problem *p = data;
    double *at = N_VGetArrayPointer(y), *rate = N_VGetArrayPointer(out);
    double in = inside_watts(at[0], at[1]);
    rate[0] = -in / 3100;
    rate[1] = (in - outside_watts(at[1], p->air)) / 420;
    return isnan(rate[0] + rate[1]) ? 1 : 0;
}

static int p1b_rates(realtype t, N_Vector y, N_Vector out, void *data) {
    Problem *p = data;
    double *at = N_VGetArrayPointer(y), *rate = N_VGetArrayPointer(out);
    rate[0] = -outside_watts(at[0], p->air) / 3520;
    return isnan(rate[0]) ? 1 : 0;
}

static double edge(const Problem *p, double t) {
    return 4 + p->swing * sin(2 * M_PI / 1800 * t);
}

static int p2_rates(realtype t, N_Vector y, N_Vector out, void *data) {
    Problem *p = data;
    double *at = N_VGetArrayPointer(y), *rate = N_VGetArrayPointer(out);
    double from = 0;
    for (int i = 0; i < p->n; i++) {
        double to = p->conductance[i] * (at[i] - (i + 1 < p->n ? at[i + 1] : edge(p, t)));
        rate[i] = (from - to) / p->capacity[i];
        from = to;
    }
    return 0;
}

static int p2_slopes(
    realtype t, N_Vector y, N_Vector f, SUNMatrix m, void *data, N_Vector a, N_Vector b, N_Vector c) {
    Problem *p = data;
    for (int i = 0; i < p->n; i++) {
        double in = i > 0 ? p->conductance[i - 1] : 0;
        SM_ELEMENT_B(m, i, i) = -(in + p->conductance[i]) / p->capacity[i];
        if (i > 0) SM_ELEMENT_B(m, i, i - 1) = in / p->capacity[i];
        if (i + 1 < p->n) SM_ELEMENT_B(m, i, i + 1) = p->conductance[i] / p->capacity[i];
    }
    return 0;
}

static void p2_layers(int n, double *capacity, double *conductance) {
    const double radius[] = {0, 0.034, 0.037, 0.043}, k[] = {0.56, 1.0, 0.035}, rc[] = {4.05e6, 2.1e6, 1e5};
    int count[] = {n / 2, n / 5, n - n / 2 - n / 5};
    double *inward = calloc(n, sizeof *inward), *outward = calloc(n, sizeof *outward);
    for (int layer = 0, cell = 0; layer < 3; layer++) {
        double width = (radius[layer + 1] - radius[layer]) / count[layer];
        for (int i = 0; i < count[layer]; i++, cell++) {
            double inner = radius[layer] + i * width, outer = radius[layer] + (i + 1) * width;
            double middle = 0.5 * (inner + outer);
            capacity[cell] = rc[layer] * M_PI * (outer * outer - inner * inner);
            inward[cell] = inner == 0 ? 0 : log(middle / inner) / (2 * M_PI * k[layer]);
            outward[cell] = log(outer / middle) / (2 * M_PI * k[layer]);
        }
    }
    for (int i = 0; i + 1 < n; i++) conductance[i] = 1 / (outward[i] + inward[i + 1]);
    conductance[n - 1] = 1 / (outward[n - 1] + 1 / (8 * 2 * M_PI * radius[3]));
    free(inward);
    free(outward);
}

static double p3_outside(int slice) { return 0.0031 * (slice < 4 ? 100 : slice < 12 ? 8 : 20); }
static double p3_air(int slice) { return slice < 4 ? 0.5 : slice < 12 ? 4 : 2; }

static int p3_rates(realtype t, N_Vector y, N_Vector out, void *data) {
    double *at = N_VGetArrayPointer(y), *rate = N_VGetArrayPointer(out);
    double mixed = 0, conducted = 0;
    for (int i = 0; i < 20; i++) {
        double inside = 0.6 * (at[2 * i] - at[2 * i + 1]), up = 0, wall_up = 0;
        if (i + 1 < 20) {
            double drive = at[2 * i] - at[2 * i + 2];
            up = (0.02 + 500 * fmax(0, drive)) * drive;
            wall_up = 0.08 * (at[2 * i + 1] - at[2 * i + 3]);
        }
        rate[2 * i] = (mixed - up - inside) / 155;
        rate[2 * i + 1] = (inside + conducted - wall_up - p3_outside(i) * (at[2 * i + 1] - p3_air(i))) / 21;
        mixed = up;
        conducted = wall_up;
    }
    return 0;
}

static int p3_slopes(
    realtype t, N_Vector y, N_Vector f, SUNMatrix m, void *data, N_Vector a, N_Vector b, N_Vector c) {
    double *at = N_VGetArrayPointer(y);
    SUNMatZero(m);
    for (int i = 0; i < 20; i++) {
        int l = 2 * i, w = l + 1;
        SM_ELEMENT_B(m, l, l) -= 0.6 / 155;
        SM_ELEMENT_B(m, l, w) += 0.6 / 155;
        SM_ELEMENT_B(m, w, l) += 0.6 / 21;
        SM_ELEMENT_B(m, w, w) -= (0.6 + p3_outside(i)) / 21;
        if (i + 1 < 20) {
            double slope = 0.02 + 1000 * fmax(0, at[l] - at[l + 2]);
            SM_ELEMENT_B(m, l, l) -= slope / 155;
            SM_ELEMENT_B(m, l, l + 2) += slope / 155;
            SM_ELEMENT_B(m, l + 2, l) += slope / 155;
            SM_ELEMENT_B(m, l + 2, l + 2) -= slope / 155;
            SM_ELEMENT_B(m, w, w) -= 0.08 / 21;
            SM_ELEMENT_B(m, w, w + 2) += 0.08 / 21;
            SM_ELEMENT_B(m, w + 2, w) += 0.08 / 21;
            SM_ELEMENT_B(m, w + 2, w + 2) -= 0.08 / 21;
        }
    }
    return 0;
}

static int fall(realtype t, N_Vector y, realtype *out, void *data) {
    out[0] = NV_Ith_S(y, 0) - ((Problem *)data)->wanted;
    return 0;
}

/* ---- The tools; made once, started anew for every solve ---- */

typedef enum { CVODE_BDF, CVODE_ADAMS, ARK_ERK, ARK_DIRK } Kind;

typedef struct {
    Kind kind;
    Problem *p;
    void *memory;
    N_Vector y;
    SUNMatrix matrix;
    SUNLinearSolver linear;
} Tool;

static void must(int flag, const char *what) {
    if (flag < 0) {
        fprintf(stderr, "%s failed: %d\n", what, flag);
        exit(2);
    }
}

static Tool make(Kind kind, Problem *p, double tolerance) {
    Tool t = {kind, p, NULL, N_VNew_Serial(p->n, context), NULL, NULL};
    N_VConst(p->start, t.y);
    int implicit = kind == CVODE_BDF || kind == ARK_DIRK;
    if (implicit) {
        t.matrix = p->band ? SUNBandMatrix(p->n, p->band, p->band, context) : SUNDenseMatrix(p->n, p->n, context);
        t.linear = p->band ? SUNLinSol_Band(t.y, t.matrix, context) : SUNLinSol_Dense(t.y, t.matrix, context);
    }
    if (kind == CVODE_BDF || kind == CVODE_ADAMS) {
        t.memory = CVodeCreate(kind == CVODE_BDF ? CV_BDF : CV_ADAMS, context);
        must(CVodeInit(t.memory, p->rates, 0, t.y), "CVodeInit");
        must(CVodeSStolerances(t.memory, tolerance, tolerance), "CVodeSStolerances");
        CVodeSetUserData(t.memory, p);
        CVodeSetMaxNumSteps(t.memory, MOST_STEPS);
        if (kind == CVODE_ADAMS) {
            extern SUNNonlinearSolver SUNNonlinSol_FixedPoint(N_Vector, int, SUNContext);
            CVodeSetNonlinearSolver(t.memory, SUNNonlinSol_FixedPoint(t.y, 0, context));
        } else {
            must(CVodeSetLinearSolver(t.memory, t.linear, t.matrix), "CVodeSetLinearSolver");
            if (p->slopes) CVodeSetJacFn(t.memory, p->slopes);
        }
        if (p->falls) CVodeRootInit(t.memory, 1, fall);
    } else if (kind == ARK_ERK) {
        t.memory = ERKStepCreate(p->rates, 0, t.y, context);
        ERKStepSetOrder(t.memory, 5);
        ERKStepSStolerances(t.memory, tolerance, tolerance);
        ERKStepSetUserData(t.memory, p);
        ERKStepSetMaxNumSteps(t.memory, MOST_STEPS);
        if (p->falls) ERKStepRootInit(t.memory, 1, fall);
    } else {
        t.memory = ARKStepCreate(NULL, p->rates, 0, t.y, context);
        ARKStepSetOrder(t.memory, 4);
        ARKStepSStolerances(t.memory, tolerance, tolerance);
        ARKStepSetUserData(t.memory, p);
        ARKStepSetMaxNumSteps(t.memory, MOST_STEPS);
        must(ARKStepSetLinearSolver(t.memory, t.linear, t.matrix), "ARKStepSetLinearSolver");
        if (p->slopes) ARKStepSetJacFn(t.memory, p->slopes);
        if (p->rates == p2_rates) ARKStepSetLinear(t.memory, 0);
        if (p->falls) ARKStepRootInit(t.memory, 1, fall);
    }
    return t;
}

static void drop(Tool *t) {
    if (t->kind == ARK_ERK) ERKStepFree(&t->memory);
    else if (t->kind == ARK_DIRK) ARKStepFree(&t->memory);
    else CVodeFree(&t->memory);
    if (t->linear) SUNLinSolFree(t->linear);
    if (t->matrix) SUNMatDestroy(t->matrix);
    N_VDestroy(t->y);
}

/* Time of the fall, or the end; the state is left in y. NaN if the tool fails. */
static double solve(Tool *t) {
    Problem *p = t->p;
    N_VConst(p->start, t->y);
    realtype at = 0;
    int flag;
    if (t->kind == ARK_ERK) {
        ERKStepReset(t->memory, 0, t->y);
        ERKStepSetInitStep(t->memory, 0);
        if (!p->falls) ERKStepSetStopTime(t->memory, p->end);
        flag = ERKStepEvolve(t->memory, p->end, t->y, &at, ARK_NORMAL);
    } else if (t->kind == ARK_DIRK) {
        must(ARKStepReInit(t->memory, NULL, p->rates, 0, t->y), "ARKStepReInit");
        flag = ARKStepEvolve(t->memory, p->end, t->y, &at, ARK_NORMAL);
    } else {
        must(CVodeReInit(t->memory, 0, t->y), "CVodeReInit");
        flag = CVode(t->memory, p->end, t->y, &at, CV_NORMAL);
    }
    return flag < 0 ? NAN : at;
}

/* ---- Timing ---- */

static double now(void) {
    struct timespec t;
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &t);
    return t.tv_sec + 1e-9 * t.tv_nsec;
}

static int ascending(const void *a, const void *b) {
    double x = *(const double *)a, y = *(const double *)b;
    return x < y ? -1 : x > y;
}

typedef double (*Work)(void *);

static volatile double sink;

static void measure(const char *job, Work work, void *data, int operations, const char *setting, const char *error) {
    double per_sample = quick ? 0.03 : 0.15;
    int samples = quick ? 5 : MOST_SAMPLES;
    long repeats = 1;
    double took = 0, spent = 0;
    do {
        double start = now();
        for (long i = 0; i < repeats; i++) sink = work(data);
        took = now() - start;
        spent += took;
        if (took < per_sample) repeats *= 2;
    } while (took < per_sample || spent < 0.2);
    double times[MOST_SAMPLES];
    for (int s = 0; s < samples; s++) {
        double start = now();
        for (long i = 0; i < repeats; i++) sink = work(data);
        times[s] = (now() - start) / ((double)repeats * operations);
    }
    qsort(times, samples, sizeof *times, ascending);
    printf("MEASURED\t%s\t%.6e\t%.6e\t%.6e\t-1\t%s\t%s\n", job, times[samples / 2], times[0], times[samples - 1],
        setting, error);
    fflush(stdout);
}

static double solve_work(void *data) { return solve(data); }

/* ---- Equal error: the loosest tolerance that passes ---- */

static double worst(Tool *t, double reference, const double *references) {
    double at = solve(t);
    if (t->p->falls) return fabs(at - reference);
    double largest = isnan(at) ? INFINITY : 0;
    for (int i = 0; i < t->p->n; i++) largest = fmax(largest, fabs(NV_Ith_S(t->y, i) - references[i]));
    return largest;
}

/* Cases differ in start and air only; references[c] is the time of case c, or there is one case and its states. */
static void compare(const char *job, Kind kind, Problem *p, int cases, const double (*settings)[2],
    const double *references, double first, int tighter, double limit, const char *unit) {
    int passed = 0, j = (int)lround(-5 * log10(first));
    double errors[64];
    for (; j <= 55; j++) {
        errors[j] = 0;
        for (int c = 0; c < cases; c++) {
            Problem q = *p;
            if (settings) {
                q.start = settings[c][0];
                q.air = settings[c][1];
            }
            Tool t = make(kind, &q, pow(10, -j / 5.0));
            double error = worst(&t, references[c], references);
            drop(&t);
            errors[j] = isnan(error) ? INFINITY : fmax(errors[j], error);
            if (errors[j] > limit) break;
        }
        passed = errors[j] <= limit ? passed + 1 : 0;
        if (passed == tighter + 1) break;
    }
    if (passed < tighter + 1) {
        fprintf(stderr, "%s: no tolerance keeps the error of %g %s, not timed\n", job, limit, unit);
        return;
    }
    j -= tighter;
    char setting[64], error[64];
    snprintf(setting, sizeof setting, "tolerance %.1e", pow(10, -j / 5.0));
    snprintf(error, sizeof error, "%.2g %s", errors[j], unit);
    Tool t = make(kind, p, pow(10, -j / 5.0));
    measure(job, solve_work, &t, 1, setting, error);
    drop(&t);
}

static void p1(void) {
    double settings[17][2] = {{22, 4}}, references[17];
    for (int a = 0; a < 4; a++)
        for (int b = 0; b < 4; b++) {
            settings[1 + 4 * a + b][0] = 18 + 3 * a;
            settings[1 + 4 * a + b][1] = 1 + 2 * b;
        }
    Problem p = {.n = 2, .rates = p1_rates, .start = 22, .air = 4, .wanted = 9, .falls = 1, .end = 60000};
    for (int c = 0; c < 17; c++) {
        Problem q = p;
        q.start = settings[c][0];
        q.air = settings[c][1];
        Tool t = make(ARK_DIRK, &q, 1e-11);
        references[c] = solve(&t);
        drop(&t);
    }
    printf("REFERENCE\tp1\t%.9f\n", references[0]);
    compare("p1/cvode-bdf", CVODE_BDF, &p, 17, settings, references, 1e-3, 4, 1, "s");
    if (!quick) compare("p1/arkode-erk5", ARK_ERK, &p, 17, settings, references, 1e-3, 4, 1, "s");
}

/* The floor of a query: 256 cubic cells in temperature, each from values and slopes of time at its ends. */
#define CELLS 256
#define PAIRS 1024
static double table[CELLS][4];
static const double table_from = 5, table_to = 35;
static double pairs[PAIRS][2];

static inline double looked_up(double at) {
    double x = (at - table_from) * (CELLS / (table_to - table_from));
    int i = (int)x;
    i = i < 0 ? 0 : i > CELLS - 1 ? CELLS - 1 : i;
    double u = x - i;
    const double *c = table[i];
    return ((c[3] * u + c[2]) * u + c[1]) * u + c[0];
}

static double queries(void *data) {
    double sum = 0;
    for (int i = 0; i < PAIRS; i++) sum += looked_up(pairs[i][1]) - looked_up(pairs[i][0]);
    return sum;
}

static double chained(void *data) {
    double last = 0;
    for (int i = 0; i < PAIRS; i++) {
        /* The next start waits for this answer. */
        last = looked_up(pairs[i][1]) - looked_up(pairs[i][0] + 1e-300 * last);
    }
    return last;
}

static double slope_s_per_k(double t) { return -3520 / outside_watts(t, 4); }

/* Time from a to b by Gauss-Legendre of 5 nodes in each of many parts. */
static double quadrature(double a, double b, int parts) {
    static const double x[] = {0, 0.5384693101056831, -0.5384693101056831, 0.9061798459386640, -0.9061798459386640};
    static const double w[] = {
        0.5688888888888889, 0.4786286704993665, 0.4786286704993665, 0.2369268850561891, 0.2369268850561891};
    double sum = 0, h = (b - a) / parts;
    for (int i = 0; i < parts; i++)
        for (int k = 0; k < 5; k++) sum += 0.5 * h * w[k] * slope_s_per_k(a + (i + 0.5) * h + 0.5 * h * x[k]);
    return sum;
}

static void p1b(void) {
    double reference = quadrature(22, 9, 400);
    printf("REFERENCE\tp1b\t%.9f\n", reference);
    Problem p = {.n = 1, .rates = p1b_rates, .start = 22, .air = 4, .wanted = 9, .falls = 1, .end = 60000};
    compare("p1b/arkode-erk5", ARK_ERK, &p, 1, NULL, &reference, 1e-1, 4, 1, "s");
    compare("p1b/cvode-adams", CVODE_ADAMS, &p, 1, NULL, &reference, 1e-1, 4, 1, "s");
    double h = (table_to - table_from) / CELLS, value = 0, largest = 0;
    for (int i = 0; i < CELLS; i++) {
        double a = table_from + i * h, next = value + quadrature(a, a + h, 4);
        double s0 = h * slope_s_per_k(a), s1 = h * slope_s_per_k(a + h), rise = next - value;
        table[i][0] = value;
        table[i][1] = s0;
        table[i][2] = 3 * rise - 2 * s0 - s1;
        table[i][3] = s0 + s1 - 2 * rise;
        value = next;
    }
    srand48(1);
    for (int i = 0; i < PAIRS; i++) {
        pairs[i][1] = 5 + 15 * drand48();
        pairs[i][0] = pairs[i][1] + (35 - pairs[i][1]) * drand48();
        double error = looked_up(pairs[i][1]) - looked_up(pairs[i][0]) - quadrature(pairs[i][0], pairs[i][1], 100);
        largest = fmax(largest, fabs(error));
    }
    if (!(largest <= 1)) {
        fprintf(stderr, "p1b/floor: error %g s, not timed\n", largest);
        return;
    }
    char error[64];
    snprintf(error, sizeof error, "%.2g s", largest);
    measure("p1b/floor", queries, NULL, PAIRS, "256 cubic cells", error);
    measure("p1b/floor-chained", chained, NULL, PAIRS, "256 cubic cells", error);
}

static void p2_one(const char *suffix, double swing) {
    enum { N = 100 };
    double capacity[N], conductance[N], reference[N];
    p2_layers(N, capacity, conductance);
    Problem p = {.n = N, .band = 1, .rates = p2_rates, .slopes = p2_slopes, .start = 22, .end = 3600, .swing = swing,
        .capacity = capacity, .conductance = conductance};
    Tool t = make(ARK_DIRK, &p, 1e-11);
    solve(&t);
    memcpy(reference, N_VGetArrayPointer(t.y), sizeof reference);
    drop(&t);
    printf("REFERENCE\tp2%s\t%.9f\n", suffix, reference[0]);
    char job[64];
    snprintf(job, sizeof job, "p2/arkode-dirk4%s", suffix);
    compare(job, ARK_DIRK, &p, 1, NULL, reference, 1e-1, 3, 1e-3, "K");
    snprintf(job, sizeof job, "p2/cvode-bdf%s", suffix);
    compare(job, CVODE_BDF, &p, 1, NULL, reference, 1e-2, 3, 1e-3, "K");
}

static void p3(void) {
    double reference[40];
    Problem p = {.n = 40, .band = 2, .rates = p3_rates, .slopes = p3_slopes, .start = 22, .end = 3600};
    Tool t = make(ARK_DIRK, &p, 1e-10);
    solve(&t);
    memcpy(reference, N_VGetArrayPointer(t.y), sizeof reference);
    drop(&t);
    printf("REFERENCE\tp3\t%.9f\n", reference[0]);
    compare("p3/cvode-bdf", CVODE_BDF, &p, 1, NULL, reference, 1e-2, 3, 1e-3, "K");
    compare("p3/arkode-dirk4", ARK_DIRK, &p, 1, NULL, reference, 1e-1, 3, 1e-3, "K");
}

int main(int count, char **arguments) {
    if (SUNContext_Create(NULL, &context) != 0) return 2;
    air_by_prandtl = by_prandtl(0.711);
    for (int i = 1; i < count; i++) {
        if (!strcmp(arguments[i], "quick")) quick = 1;
        else if (!strcmp(arguments[i], "version")) printf("SUNDIALS %s\n", SUNDIALS_VERSION);
        else if (!strcmp(arguments[i], "p1")) p1();
        else if (!strcmp(arguments[i], "p1b")) p1b();
        else if (!strcmp(arguments[i], "p2")) p2_one("", 0), p2_one("-swing", 2);
        else if (!strcmp(arguments[i], "p3")) p3();
    }
    return 0;
}
