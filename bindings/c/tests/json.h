/* A small reader of JSON for the tests: a line becomes a tree. Texts of the vectors have no escapes but of signs. */
#ifndef JSON_H
#define JSON_H

#include "check.h"

enum json_kind { JSON_NULL, JSON_NUMBER, JSON_TEXT, JSON_LIST, JSON_OBJECT };

struct json {
    enum json_kind kind;
    double number;
    char *text;
    /* The name in the object that it is in. */
    char *name;
    struct json *first, *next;
};

static inline void json_free(struct json *value)
{
    while (value != NULL) {
        struct json *next = value->next;
        json_free(value->first);
        free(value->text);
        free(value->name);
        free(value);
        value = next;
    }
}

static inline char *json_read_text(const char **at)
{
    const char *end = *at + 1;
    char *text, *to;
    while (*end != '"') end += *end == '\\' ? 2 : 1;
    text = to = malloc((size_t)(end - *at));
    if (text == NULL) exit(2);
    for ((*at)++; **at != '"'; (*at)++) {
        if (**at == '\\') (*at)++;
        *to++ = **at;
    }
    (*at)++;
    *to = '\0';
    return text;
}

static inline struct json *json_read(const char **at)
{
    struct json *value = calloc(1, sizeof *value), **last = &value->first;
    char open = **at, *end;
    if (value == NULL) exit(2);
    switch (open) {
    case '"':
        value->kind = JSON_TEXT;
        value->text = json_read_text(at);
        break;
    case '[':
    case '{':
        value->kind = open == '[' ? JSON_LIST : JSON_OBJECT;
        for ((*at)++; **at != ']' && **at != '}'; *at += **at == ',') {
            char *name = NULL;
            if (open == '{') {
                name = json_read_text(at);
                (*at)++;
            }
            *last = json_read(at);
            (*last)->name = name;
            last = &(*last)->next;
        }
        (*at)++;
        break;
    case 'n':
        *at += 4;
        break;
    default:
        value->kind = JSON_NUMBER;
        value->number = strtod(*at, &end);
        if (end == *at) exit(2);
        *at = end;
    }
    return value;
}

/* The value of this name in an object; NULL where there is none. */
static inline struct json *json_of(const struct json *object, const char *name)
{
    struct json *value = object == NULL ? NULL : object->first;
    while (value != NULL && strcmp(value->name, name) != 0) value = value->next;
    return value;
}

static inline size_t json_length(const struct json *list)
{
    size_t length = 0;
    const struct json *item;
    for (item = list->first; item != NULL; item = item->next) length++;
    return length;
}

#endif
