/* The functions that the extension registers. */
#ifndef POUR_EXTENSION_H
#define POUR_EXTENSION_H

#include "duckdb_api.h"

/* A calculation, which is the function's own data. */
void calculate(duckdb_function_info info, duckdb_data_chunk input, duckdb_vector output);

/* Why a row of a function is refused. */
void why(duckdb_function_info info, duckdb_data_chunk input, duckdb_vector output);

#endif
