#include "peers.h"

#include <math.h>

#ifdef __x86_64__
#include <xmmintrin.h>
typedef unsigned state;
static state take(void) { return _mm_getcsr(); }
static void put(state host) { _mm_setcsr(host); }
#else
#include <fenv.h>
typedef fenv_t state;
static state take(void)
{
    fenv_t host;
    fegetenv(&host);
    return host;
}
static void put(state host) { fesetenv(&host); }
#endif

static const double MOST = 1e15;

static int amount(double x) { return x >= 0 && x <= MOST; }
static int above(double x) { return x > 0 && x <= MOST; }
static int share(double x) { return x >= 0 && x < 1; }

static inline int mass_of_volume(double volume_ml, double g_per_ml, double *mass_g)
{
    if (!amount(volume_ml) || !above(g_per_ml)) return 1;
    *mass_g = volume_ml * g_per_ml;
    return 0;
}

static inline int convert(double times, double plus, double over, double least, double value, double *converted)
{
    double found = (value * times + plus) / over;
    if (!(value >= least) || !isfinite(found)) return 1;
    *converted = found;
    return 0;
}

static inline int piece_mass(double cavity_ml, double hot, double cold, double voids, double feed, double *piece_g)
{
    if (!above(cavity_ml) || !above(hot) || !above(cold) || hot > cold || !share(voids)
        || !(feed >= 0 && feed <= 1)) {
        return 1;
    }
    *piece_g = cavity_ml * (1 - voids) * (hot + feed * (cold - hot));
    return 0;
}

static inline int salt_mass(double base_ml, double base, double salt, double voids, double wanted, double *salt_g)
{
    double solid, grams;
    if (!above(base_ml) || !above(base) || !above(salt) || !share(voids) || !above(wanted)) return 1;
    solid = wanted / (1 - voids);
    grams = (solid - base) * base_ml / (1 - solid / salt);
    /* Up to 30 % of salt by volume. */
    if (!(grams >= 0) || !(solid < salt) || grams / salt > 0.3 * (base_ml + grams / salt)) return 1;
    *salt_g = grams;
    return 0;
}

static inline int density_of_parts(size_t parts, const double *masses_g, const double *g_per_ml, double voids,
                                   double *out)
{
    double mass = 0, volume = 0;
    size_t i;
    if (!share(voids)) return 1;
    for (i = 0; i < parts; i++) {
        if (!amount(masses_g[i]) || !above(g_per_ml[i])) return 1;
        mass += masses_g[i];
        volume += masses_g[i] / g_per_ml[i];
    }
    if (!(volume > 0)) return 1;
    *out = mass / volume * (1 - voids);
    return 0;
}

/* Tanaka et al. 2001. */
static inline int water_density(double celsius, double *g_per_ml)
{
    double from = celsius - 3.983035;
    if (!(celsius >= 0 && celsius <= 40)) return 1;
    *g_per_ml = 0.999974950 * (1 - from * from * (celsius + 301.797) / (522528.9 * (celsius + 69.34881)));
    return 0;
}

/* What is timed as a scalar call. The one that keeps the state calls the other, so that the compiler moves no sum
 * across it. */
#define PEERS(sum, parameters, arguments)                           \
    __attribute__((noinline)) int peer_##sum parameters             \
    {                                                               \
        return sum arguments;                                       \
    }                                                               \
    int keeping_##sum parameters                                    \
    {                                                               \
        const state host = take();                                  \
        const int status = peer_##sum arguments;                    \
        put(host);                                                  \
        return status;                                              \
    }

PEERS(mass_of_volume, (double volume_ml, double g_per_ml, double *mass_g), (volume_ml, g_per_ml, mass_g))
PEERS(convert, (double times, double plus, double over, double least, double value, double *converted),
      (times, plus, over, least, value, converted))
PEERS(piece_mass, (double cavity_ml, double hot, double cold, double voids, double feed, double *piece_g),
      (cavity_ml, hot, cold, voids, feed, piece_g))
PEERS(salt_mass, (double base_ml, double base, double salt, double voids, double wanted, double *salt_g),
      (base_ml, base, salt, voids, wanted, salt_g))
PEERS(density_of_parts, (size_t parts, const double *masses_g, const double *g_per_ml, double voids, double *density),
      (parts, masses_g, g_per_ml, voids, density))
PEERS(water_density, (double celsius, double *g_per_ml), (celsius, g_per_ml))

void loop_convert(size_t rows, double times, double plus, double over, double least, const double *in, double *out)
{
    size_t i;
    for (i = 0; i < rows; i++) {
        double found = (in[i] * times + plus) / over;
        out[i] = in[i] >= least && isfinite(found) ? found : NAN;
    }
}

void loop_mass_of_volume(size_t rows, const double *volume_ml, const double *g_per_ml, double *mass_g)
{
    size_t i;
    for (i = 0; i < rows; i++) {
        mass_g[i] = amount(volume_ml[i]) && above(g_per_ml[i]) ? volume_ml[i] * g_per_ml[i] : NAN;
    }
}

void loop_piece_mass(size_t rows, const double *cavity_ml, const double *hot, const double *cold, const double *voids,
                     const double *feed, double *piece_g)
{
    size_t i;
    for (i = 0; i < rows; i++) {
        if (piece_mass(cavity_ml[i], hot[i], cold[i], voids[i], feed[i], &piece_g[i]) != 0) piece_g[i] = NAN;
    }
}

void loop_salt(size_t rows, const double *base_ml, const double *base, const double *salt, const double *voids,
               const double *wanted, double *salt_g)
{
    size_t i;
    for (i = 0; i < rows; i++) {
        if (salt_mass(base_ml[i], base[i], salt[i], voids[i], wanted[i], &salt_g[i]) != 0) salt_g[i] = NAN;
    }
}

void loop_density_of_parts(size_t rows, size_t parts, const double *masses_g, const double *g_per_ml, double voids,
                           double *out)
{
    size_t i;
    for (i = 0; i < rows; i++) {
        if (density_of_parts(parts, masses_g + i * parts, g_per_ml, voids, &out[i]) != 0) out[i] = NAN;
    }
}

static void bad_to_nan(size_t rows, const double *good, double *out)
{
    size_t i;
    for (i = 0; i < rows; i++) out[i] = good[i] != 0 ? out[i] : NAN;
}

static void both(size_t rows, const double *in, double least, double most, double *good)
{
    size_t i;
    for (i = 0; i < rows; i++) good[i] = in[i] >= least && in[i] <= most ? good[i] : 0;
}

static void all_good(size_t rows, double *good)
{
    size_t i;
    for (i = 0; i < rows; i++) good[i] = 1;
}

void passes_convert(size_t rows, double times, double plus, double over, double least, const double *in, double *out,
                    double *scratch)
{
    double *good = scratch;
    size_t i;
    for (i = 0; i < rows; i++) out[i] = in[i] * times;
    for (i = 0; i < rows; i++) out[i] += plus;
    for (i = 0; i < rows; i++) out[i] /= over;
    all_good(rows, good);
    both(rows, in, least, MOST, good);
    bad_to_nan(rows, good, out);
}

void passes_mass_of_volume(size_t rows, const double *volume_ml, const double *g_per_ml, double *mass_g,
                           double *scratch)
{
    double *good = scratch;
    size_t i;
    all_good(rows, good);
    both(rows, volume_ml, 0, MOST, good);
    both(rows, g_per_ml, 1e-300, MOST, good);
    for (i = 0; i < rows; i++) mass_g[i] = volume_ml[i] * g_per_ml[i];
    bad_to_nan(rows, good, mass_g);
}

void passes_piece_mass(size_t rows, const double *cavity_ml, const double *hot, const double *cold,
                       const double *voids, const double *feed, double *piece_g, double *scratch)
{
    double *good = scratch, *rise = scratch + rows, *solid = scratch + 2 * rows;
    size_t i;
    all_good(rows, good);
    both(rows, cavity_ml, 1e-300, MOST, good);
    both(rows, hot, 1e-300, MOST, good);
    both(rows, cold, 1e-300, MOST, good);
    both(rows, voids, 0, 1, good);
    both(rows, feed, 0, 1, good);
    for (i = 0; i < rows; i++) rise[i] = cold[i] - hot[i];
    both(rows, rise, 0, MOST, good);
    for (i = 0; i < rows; i++) rise[i] *= feed[i];
    for (i = 0; i < rows; i++) rise[i] += hot[i];
    for (i = 0; i < rows; i++) solid[i] = 1 - voids[i];
    for (i = 0; i < rows; i++) solid[i] *= cavity_ml[i];
    for (i = 0; i < rows; i++) piece_g[i] = solid[i] * rise[i];
    bad_to_nan(rows, good, piece_g);
}
