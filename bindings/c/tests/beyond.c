/* Reads one number beyond an array, inside the library: a run under the sanitizer must end here. */
#include "check.h"

int main(void)
{
    pour_parts_row *two = malloc(2 * sizeof *two);
    double out;
    if (two == NULL) return 2;
    two[0] = two[1] = (pour_parts_row){1, 1};
    pour_density_of_parts(two, 3, 0, &out, NULL);
    puts("nobody noticed");
    free(two);
    return 0;
}
