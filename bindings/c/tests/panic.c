/* Against a library that was built with the feature panic-test: a panic is a status, and nothing is printed. */
#include "check.h"

int32_t pour_test_panic(pour_error **error);

int main(void)
{
    double out = 0;
    int i;
    for (i = 0; i < 3; i++) {
        FAILS(pour_test_panic(error), POUR_PANIC, "panic", "");
    }
    /* The library works on. */
    CHECK(pour_mass_of_volume(2, 3, &out, NULL) == POUR_OK && near(out, 6));
    return outcome("panic");
}
