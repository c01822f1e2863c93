/* Reads one number beyond an array, inside the library: a run under the sanitizer must end here. */
#include "check.h"

int main(void)
{
    double *two = malloc(2 * sizeof *two), out;
    if (two == NULL) return 2;
    two[0] = two[1] = 1;
    pour_density_of_parts(3, two, two, 0, &out, NULL);
    puts("nobody noticed");
    free(two);
    return 0;
}
