#define _GNU_SOURCE

#include "json.h"
#include "sql.h"

#include <locale.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>
#ifdef __APPLE__
#include <xlocale.h>
#endif

SQLITE_EXTENSION_INIT3

/* The longest number that is read, in letters. */
#define LONGEST_NUMBER 400

/* The deepest nesting that is read. */
#define DEEPEST 64

/* Numbers have a point in every country: the host may have set another. */
static locale_t plain;

int json_begin(void)
{
    sqlite3_mutex *mutex = sqlite3_mutex_alloc(SQLITE_MUTEX_STATIC_APP1);

    /* Two connections may load the extension at once. */
    sqlite3_mutex_enter(mutex);
    if (!plain)
        plain = newlocale(LC_ALL_MASK, "C", (locale_t)0);
    sqlite3_mutex_leave(mutex);
    return plain != (locale_t)0;
}

struct json json_of(const char *text, size_t length)
{
    struct json json = {text, text + length};

    return json;
}

static void skip_spaces(struct json *from)
{
    while (from->at < from->end && strchr(" \t\r\n", *from->at) && *from->at)
        from->at++;
}

int json_take(struct json *from, char letter)
{
    skip_spaces(from);
    if (from->at == from->end || *from->at != letter)
        return 0;
    from->at++;
    return 1;
}

int json_is_over(struct json *from)
{
    skip_spaces(from);
    return from->at == from->end;
}

static size_t digits(const char *at, const char *end)
{
    const char *start = at;

    while (at < end && *at >= '0' && *at <= '9')
        at++;
    return (size_t)(at - start);
}

int json_number(struct json *from, double *number)
{
    char text[LONGEST_NUMBER + 1];
    const char *at, *end = from->end;
    size_t length;

    skip_spaces(from);
    at = from->at;
    if (at < end && *at == '-')
        at++;
    length = digits(at, end);
    if (length == 0 || (length > 1 && *at == '0'))
        return 0;
    at += length;
    if (at < end && *at == '.') {
        length = digits(++at, end);
        if (length == 0)
            return 0;
        at += length;
    }
    if (at < end && (*at == 'e' || *at == 'E')) {
        at++;
        if (at < end && (*at == '-' || *at == '+'))
            at++;
        length = digits(at, end);
        if (length == 0)
            return 0;
        at += length;
    }
    length = (size_t)(at - from->at);
    if (length > LONGEST_NUMBER)
        return 0;
    memcpy(text, from->at, length);
    text[length] = 0;
    *number = strtod_l(text, NULL, plain);
    from->at = at;
    return 1;
}

/* Four hexadecimal digits, or -1. */
static int32_t escaped(const char *at, const char *end)
{
    int32_t number = 0;

    if (end - at < 4)
        return -1;
    for (int place = 0; place < 4; place++) {
        const char *digits = "0123456789abcdef", *found;
        char letter = at[place];

        if (letter >= 'A' && letter <= 'F')
            letter += 'a' - 'A';
        found = letter ? strchr(digits, letter) : NULL;
        if (!found)
            return -1;
        number = number * 16 + (int32_t)(found - digits);
    }
    return number;
}

static char *utf8(char *to, int32_t letter)
{
    if (letter < 0x80) {
        *to++ = (char)letter;
    } else if (letter < 0x800) {
        *to++ = (char)(0xc0 | letter >> 6);
        *to++ = (char)(0x80 | (letter & 0x3f));
    } else if (letter < 0x10000) {
        *to++ = (char)(0xe0 | letter >> 12);
        *to++ = (char)(0x80 | (letter >> 6 & 0x3f));
        *to++ = (char)(0x80 | (letter & 0x3f));
    } else {
        *to++ = (char)(0xf0 | letter >> 18);
        *to++ = (char)(0x80 | (letter >> 12 & 0x3f));
        *to++ = (char)(0x80 | (letter >> 6 & 0x3f));
        *to++ = (char)(0x80 | (letter & 0x3f));
    }
    return to;
}

/* The length of a string with its quotes, or 0. */
static size_t quoted(const struct json *from)
{
    const char *at = from->at;

    if (at == from->end || *at != '"')
        return 0;
    for (at++; at < from->end && *at != '"'; at++)
        if (*at == '\\' && at + 1 < from->end)
            at++;
    return at < from->end ? (size_t)(at + 1 - from->at) : 0;
}

char *json_string(struct json *from)
{
    size_t length;
    char *text, *to;
    const char *at, *end;

    skip_spaces(from);
    length = quoted(from);
    /* No letter takes more room than it had. */
    text = length ? sqlite3_malloc64(length) : NULL;
    if (!text)
        return NULL;
    end = from->at + length - 1;
    for (at = from->at + 1, to = text; at < end; at++) {
        const char *names = "\"\\/bfnrt", *means = "\"\\/\b\f\n\r\t", *name;
        int32_t letter, low;

        if (*at != '\\') {
            *to++ = *at;
            continue;
        }
        at++;
        if (*at != 'u') {
            name = *at ? strchr(names, *at) : NULL;
            if (!name)
                goto wrong;
            *to++ = means[name - names];
            continue;
        }
        letter = escaped(at + 1, end);
        at += 4;
        if (letter >= 0xd800 && letter < 0xdc00 && end - at > 6 && at[1] == '\\' && at[2] == 'u') {
            low = escaped(at + 3, end);
            if (low < 0xdc00 || low > 0xdfff)
                goto wrong;
            letter = 0x10000 + ((letter - 0xd800) << 10) + (low - 0xdc00);
            at += 6;
        }
        /* A text of C ends at a NUL. */
        if (letter <= 0 || (letter >= 0xd800 && letter < 0xe000))
            goto wrong;
        to = utf8(to, letter);
    }
    *to = 0;
    from->at = end + 1;
    return text;
wrong:
    sqlite3_free(text);
    return NULL;
}

static int skip(struct json *from, int depth)
{
    static const char *const words[] = {"true", "false", "null"};
    double number;
    size_t length;

    if (depth > DEEPEST)
        return 0;
    if (json_take(from, '[')) {
        if (json_take(from, ']'))
            return 1;
        do
            if (!skip(from, depth + 1))
                return 0;
        while (json_take(from, ','));
        return json_take(from, ']');
    }
    if (json_take(from, '{')) {
        if (json_take(from, '}'))
            return 1;
        do {
            skip_spaces(from);
            length = quoted(from);
            from->at += length;
            if (!length || !json_take(from, ':') || !skip(from, depth + 1))
                return 0;
        } while (json_take(from, ','));
        return json_take(from, '}');
    }
    skip_spaces(from);
    length = quoted(from);
    if (length) {
        from->at += length;
        return 1;
    }
    for (int word = 0; word < 3; word++) {
        length = strlen(words[word]);
        if ((size_t)(from->end - from->at) >= length && memcmp(from->at, words[word], length) == 0) {
            from->at += length;
            return 1;
        }
    }
    return json_number(from, &number);
}

int json_skip(struct json *from)
{
    return skip(from, 0);
}

/* Finds a field of an object by its name. */
static int field(struct json from, const char *name, size_t name_length, struct json *value)
{
    if (!json_take(&from, '{') || json_take(&from, '}'))
        return 0;
    do {
        const char *start;
        size_t length;
        int is_it;

        skip_spaces(&from);
        length = quoted(&from);
        is_it = length == name_length + 2 && memcmp(from.at + 1, name, name_length) == 0;
        from.at += length;
        if (!length || !json_take(&from, ':'))
            return 0;
        skip_spaces(&from);
        start = from.at;
        if (!json_skip(&from))
            return 0;
        if (is_it) {
            *value = json_of(start, (size_t)(from.at - start));
            return *start != 'n';
        }
    } while (json_take(&from, ','));
    return 0;
}

int json_find(struct json object, const char *path, struct json *value)
{
    *value = object;
    while (*path) {
        size_t length = strcspn(path, ".");

        if (!field(*value, path, length, value))
            return 0;
        path += length + (path[length] == '.');
    }
    return 1;
}
