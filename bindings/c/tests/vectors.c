/* Sends every request of tests/vectors through C and compares the answers byte by byte: vectors REQUESTS ANSWERS. Where
 * POURWRIGHT_ANSWERS names a folder, the answers are written there: tests/doors. */
#include "check.h"

/* Cuts off the next line of `rest`; NULL after the last. */
static char *next_line(char **rest)
{
    char *line = *rest, *end = strchr(line, '\n');
    if (end == NULL) return NULL;
    *end = '\0';
    *rest = end + 1;
    return line;
}

int main(int argc, char **argv)
{
    char *requests, *answers, *request, *answer, *next_request, *next_answer;
    struct text all = {NULL, 0, 0};
    size_t len, count = 0;
    if (argc != 3) {
        fprintf(stderr, "Usage: vectors REQUESTS ANSWERS\n");
        return 2;
    }
    next_request = requests = read_file(argv[1], &len);
    next_answer = answers = read_file(argv[2], &len);
    while ((request = next_line(&next_request)) != NULL) {
        char *out = NULL, *in_one = pour_answer(request);
        pour_error *error = NULL;
        int32_t status = pour_request(request, strlen(request), &out, &len, &error);
        const char *found = status == POUR_OK ? out : pour_error_json(error);
        answer = next_line(&next_answer);
        count++;
        if (answer == NULL || strcmp(found, answer) != 0 || (status == POUR_OK && len != strlen(answer))) {
            fprintf(stderr, "%s:%lu\n  %s\n  not\n  %s\n", argv[1], (unsigned long)count, found,
                    answer == NULL ? "(no answer)" : answer);
            failures++;
        }
        add(&all, "%s\n", found);
        CHECK(in_one != NULL && strcmp(in_one, found) == 0);
        pour_string_free(in_one);
        pour_string_free(out);
        pour_error_free(error);
    }
    CHECK(count > 100 && next_line(&next_answer) == NULL);
    write_answers("c.requests", &all);
    free(all.start);
    free(answers);
    free(requests);
    return outcome("vectors");
}
