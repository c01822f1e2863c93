/* The same sums in plain C, as a host would write them itself: numbers are checked, a bad one is a status or NaN, and
 * there is no error that says what was wrong. Each is compiled on its own, so that it is a call as the library's is. */
#ifndef PEERS_H
#define PEERS_H

#include <stddef.h>

int peer_mass_of_volume(double volume_ml, double g_per_ml, double *mass_g);
int peer_convert(double times, double plus, double over, double least, double value, double *converted);
int peer_piece_mass(double cavity_ml, double hot, double cold, double voids, double feed, double *piece_g);
int peer_salt_mass(double base_ml, double base, double salt, double voids, double wanted, double *salt_g);
int peer_density_of_parts(size_t parts, const double *masses_g, const double *g_per_ml, double voids, double *density);
int peer_water_density(double celsius, double *g_per_ml);

/* The same by a function that, as the library does, leaves the floating-point flags as it found them. */
int keeping_mass_of_volume(double volume_ml, double g_per_ml, double *mass_g);
int keeping_convert(double times, double plus, double over, double least, double value, double *converted);
int keeping_piece_mass(double cavity_ml, double hot, double cold, double voids, double feed, double *piece_g);
int keeping_salt_mass(double base_ml, double base, double salt, double voids, double wanted, double *salt_g);
int keeping_density_of_parts(size_t parts, const double *masses_g, const double *g_per_ml, double voids,
                             double *density);
int keeping_water_density(double celsius, double *g_per_ml);

/* A loop over plain arrays. */
void loop_convert(size_t rows, double times, double plus, double over, double least, const double *in, double *out);
void loop_mass_of_volume(size_t rows, const double *volume_ml, const double *g_per_ml, double *mass_g);
void loop_piece_mass(size_t rows, const double *cavity_ml, const double *hot, const double *cold, const double *voids,
                     const double *feed, double *piece_g);
void loop_salt(size_t rows, const double *base_ml, const double *base, const double *salt, const double *voids,
               const double *wanted, double *salt_g);
void loop_density_of_parts(size_t rows, size_t parts, const double *masses_g, const double *g_per_ml, double voids,
                           double *density);

/* One pass over the arrays for each operation and each check, as array programs do it, in three arrays of scratch. */
void passes_convert(size_t rows, double times, double plus, double over, double least, const double *in, double *out,
                    double *scratch);
void passes_mass_of_volume(size_t rows, const double *volume_ml, const double *g_per_ml, double *mass_g,
                           double *scratch);
void passes_piece_mass(size_t rows, const double *cavity_ml, const double *hot, const double *cold,
                       const double *voids, const double *feed, double *piece_g, double *scratch);

#endif
