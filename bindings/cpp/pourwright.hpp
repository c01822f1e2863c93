// pourwright for C++17: handles that free themselves, and exceptions with all faults.
//
// A thin layer over pourwright.h, whose contract also applies here. Books, plans and mixes have classes. The calculations
// are those of pourwright.h: `get` returns what a call writes, a number or the struct of its results.
//
//     double grams = pourwright::get<double>(pour_mass_of_volume, 59.0, 1.22);
//     pour_shot_fill_input shot = POUR_SHOT_FILL_INPUT_INIT;
//     shot.cavities = 4;
//     // ...
//     pour_shot_fill_result filled = pourwright::get<pour_shot_fill_result>(pour_shot_fill, &shot);
#ifndef POURWRIGHT_HPP
#define POURWRIGHT_HPP

#include <cstdint>
#include <exception>
#include <functional>
#include <memory>
#include <stdexcept>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "pourwright.h"

namespace pourwright {

/// One fault: a stable code, its place as a JSON Pointer, what was found, and what would fix it.
struct fault {
    std::string code;
    std::string path;
    std::string message;
    std::string help;
};

/// The exception of a failed call. `what()` has all faults, one a line.
class error : public std::runtime_error {
public:
    error(std::int32_t status, const std::string &text, std::string json, std::vector<fault> faults)
        : std::runtime_error(text), status_(status), json_(std::move(json)), faults_(std::move(faults)) {}

    /// The status of the call, `POUR_NULL` to `POUR_OUT_OF_MEMORY`.
    std::int32_t status() const noexcept { return status_; }

    /// The faults, in the order in which they were found.
    const std::vector<fault> &faults() const noexcept { return faults_; }

    /// The faults as the JSON of the other doors: `{"faults":[...]}`.
    const std::string &json() const noexcept { return json_; }

private:
    std::int32_t status_;
    std::string json_;
    std::vector<fault> faults_;
};

namespace detail {

struct free_error { void operator()(pour_error *it) const noexcept { pour_error_free(it); } };
struct free_book { void operator()(pour_book *it) const noexcept { pour_book_free(it); } };
struct free_plan { void operator()(pour_plan *it) const noexcept { pour_plan_free(it); } };
struct free_mix { void operator()(pour_mix *it) const noexcept { pour_mix_free(it); } };
struct free_string { void operator()(char *it) const noexcept { pour_string_free(it); } };

[[noreturn]] inline void fail(std::int32_t status, pour_error *raw) {
    const std::unique_ptr<pour_error, free_error> failed(raw);
    std::vector<fault> faults;
    for (std::size_t i = 0; i < pour_error_count(raw); ++i) {
        faults.push_back({pour_error_code(raw, i), pour_error_path(raw, i), pour_error_message(raw, i),
                          pour_error_help(raw, i)});
    }
    if (raw == nullptr) throw error(status, "pourwright failed without an error", "{}", {});
    throw error(status, pour_error_text(raw), pour_error_json(raw), std::move(faults));
}

} // namespace detail

/// Calls a function of pourwright.h whose last parameter is the error; throws if it fails.
template <typename... Parameters, typename... Arguments>
void call(std::int32_t (*function)(Parameters...), Arguments... arguments) {
    pour_error *failed = nullptr;
    const std::int32_t status = function(arguments..., &failed);
    if (status != POUR_OK) detail::fail(status, failed);
}

/// Calls a function of pourwright.h that writes one result through its last pointer; returns that result.
template <typename Result, typename... Parameters, typename... Arguments>
Result get(std::int32_t (*function)(Parameters...), Arguments... arguments) {
    Result result{};
    call(function, arguments..., &result);
    return result;
}

namespace detail {

/// The text that a function returns through a pointer.
template <typename... Parameters, typename... Arguments>
std::string text(std::int32_t (*function)(Parameters...), Arguments... arguments) {
    char *out = nullptr;
    std::size_t length = 0;
    call(function, arguments..., &out, &length);
    const std::unique_ptr<char, free_string> owner(out);
    return std::string(out, length);
}

} // namespace detail

/// Throws `std::runtime_error` unless the loaded library has the ABI version of this header.
inline void check_version() {
    if (pour_abi_version() != POUR_ABI_VERSION) {
        throw std::runtime_error("The loaded pourwright has another ABI version than pourwright.h.");
    }
}

/// Answers a request, JSON text to JSON text. Throws `error` with all faults of the request.
inline std::string request(std::string_view json) {
    return detail::text(pour_request, json.data(), json.size());
}

/// Answers a request, JSON text to JSON text: `{"result":...}`, or `{"faults":[...]}` where `request` would throw.
inline std::string answer(const std::string &json) {
    const std::unique_ptr<char, detail::free_string> text(pour_answer(json.c_str()));
    if (text == nullptr) throw std::runtime_error("pourwright could not write an answer.");
    return text.get();
}

/// The JSON Schema with this name, "request" or another. Throws `error` with the names for one that there is not.
inline std::string schema(const std::string &name) { return detail::text(pour_schema, name.c_str()); }

/// Answers of many requests.
struct answered_lines {
    std::string text;    ///< One answer a line, in the order of the requests.
    std::size_t refused; ///< The number of lines that were answered by faults.
};

namespace detail {

/// The answers that a function returns through three pointers.
template <typename... Parameters, typename... Arguments>
answered_lines lines(std::int32_t (*function)(Parameters...), Arguments... arguments) {
    char *out = nullptr;
    std::size_t length = 0, refused = 0;
    call(function, arguments..., &out, &length, &refused);
    const std::unique_ptr<char, free_string> owner(out);
    return {std::string(out, length), refused};
}

} // namespace detail

/// Answers many requests, one a line (JSON Lines). A line that is not a request has its faults in its place.
inline answered_lines request_lines(std::string_view lines) {
    return detail::lines(pour_lines, lines.data(), lines.size());
}

/// A conversion from one unit to another, prepared once for many numbers.
class conversion {
public:
    conversion(const char *from, const char *to, std::int32_t measures)
        : way_(get<pour_conversion>(pour_conversion_between, from, to, measures)) {}

    double operator()(double value) const { return get<double>(pour_convert_with, &way_, value); }

    /// For `pour_convert_with_n`.
    const pour_conversion *raw() const noexcept { return &way_; }

private:
    pour_conversion way_;
};

/// Amounts as texts, such as a table of a shop has them.
struct texts {
    const char *letters;         ///< All texts, one after the other.
    const std::int64_t *offsets; ///< Where each begins, and then where the last ends: one more than rows.
    std::size_t rows;            ///< The number of texts.
};

/// Converts amounts as texts to numbers of one unit; a text that is refused is NaN. `statuses` may be null, or has a place for
/// each row. Throws `error` for a unit that there is not.
inline std::vector<double> convert_texts(const texts &amounts, const char *to, std::int32_t measures = 0,
                                         std::int32_t *statuses = nullptr) {
    std::vector<double> found(amounts.rows);
    const pour_result_column column = {found.data(), sizeof(double)};
    call(pour_convert_texts_n, amounts.rows, amounts.letters, amounts.offsets, to, measures, column, statuses);
    return found;
}

/// A day's plan with the book that it was made from, for any number of threads at once.
class plan {
public:
    /// Opens a plan again from the JSON that `json()` gave. Throws `error` with all its faults.
    static plan from_json(std::string_view json) {
        return plan(get<pour_plan *>(pour_plan_from_json, json.data(), json.size()));
    }

    /// Answers a request, which leaves `book` and `plan` out. Throws `error` with all faults of the request.
    std::string request(std::string_view json) const {
        return detail::text(pour_plan_request, raw(), json.data(), json.size());
    }

    /// The plan as JSON: the record of the day.
    std::string json() const { return detail::text(pour_plan_json, raw()); }

    /// The bench sheet: text of 80 columns.
    std::string sheet() const { return detail::text(pour_plan_sheet, raw()); }

    /// The notes to it: what to know beyond the sheet.
    std::string notes() const { return detail::text(pour_plan_notes, raw()); }

    const pour_plan *raw() const noexcept { return handle_.get(); }

private:
    friend class book;
    explicit plan(pour_plan *raw) : handle_(raw) {}
    std::unique_ptr<pour_plan, detail::free_plan> handle_;
};

/// What a plan may take; the library's default where a number is omitted.
struct budget {
    /// Maximum number of pots.
    std::uint32_t pots = POUR_OMITTED_COUNT;

    /// Maximum work.
    std::uint32_t thousand_steps = POUR_OMITTED_COUNT;

    /// Asked about every millisecond of planning, which ends if it returns true. What it throws leaves `book::plan`.
    std::function<bool()> stop = nullptr;
};

namespace detail {

/// The question of a budget, and what it threw: no exception may cross the library.
struct question {
    const std::function<bool()> &stop;
    std::exception_ptr thrown;

    static std::int32_t ask(void *user) noexcept {
        question &asked = *static_cast<question *>(user);
        try {
            return asked.stop();
        } catch (...) {
            asked.thrown = std::current_exception();
            return true;
        }
    }
};

} // namespace detail

/// A shop's book: loaded once for many plans and requests, by any number of threads at once.
class book {
public:
    explicit book(std::string_view json)
        : handle_(get<pour_book *>(pour_book_from_json, json.data(), json.size())) {}

    /// Plans the day of an order list, JSON text. Throws `error` with all its faults, or why there is no plan.
    pourwright::plan plan(std::string_view orders) const {
        return pourwright::plan(get<pour_plan *>(pour_book_plan, raw(), orders.data(), orders.size()));
    }

    /// The same within a budget: also throws `error` with `POUR_OVER_BUDGET` or `POUR_STOPPED`.
    pourwright::plan plan(std::string_view orders, const budget &within) const {
        detail::question question{within.stop, nullptr};
        pour_plan *made = nullptr;
        pour_error *failed = nullptr;
        const std::int32_t status =
            pour_book_plan_within(raw(), orders.data(), orders.size(), within.pots, within.thousand_steps,
                                  within.stop ? detail::question::ask : nullptr, &question, &made, &failed);
        if (question.thrown) {
            pour_error_free(failed);
            std::rethrow_exception(question.thrown);
        }
        if (status != POUR_OK) detail::fail(status, failed);
        return pourwright::plan(made);
    }

    /// Answers a request, which leaves `book` out. Throws `error` with all faults of the request.
    std::string request(std::string_view json) const {
        return detail::text(pour_book_request, raw(), json.data(), json.size());
    }

    /// Answers many requests, one a line, which leave `book` out: as `request_lines`.
    answered_lines request_lines(std::string_view lines) const {
        return detail::lines(pour_book_lines, raw(), lines.data(), lines.size());
    }

    const pour_book *raw() const noexcept { return handle_.get(); }

private:
    std::unique_ptr<pour_book, detail::free_book> handle_;
};

/// Masses of materials in one vessel, for one thread at a time. Masses in g.
class mix {
public:
    /// An empty mix of the materials of a book.
    explicit mix(const book &of) : handle_(get<pour_mix *>(pour_mix_of_book, of.raw())) {}

    /// An empty mix of these materials.
    explicit mix(const std::vector<pour_material> &materials)
        : handle_(get<pour_mix *>(pour_mix_of_materials, materials.data(), materials.size())) {}

    void add(const char *material, double mass_g) { call(pour_mix_add, raw(), material, mass_g); }

    /// Takes a mass of the well-stirred mix out, as a mix of its own.
    mix draw(double mass_g) { return mix(get<pour_mix *>(pour_mix_draw, raw(), mass_g)); }

    /// Adds all masses of another mix, which does not change.
    void merge(const mix &other) {
        const pour_mix *poured = other.raw();
        call(pour_mix_merge, raw(), poured);
    }

    void scale(double factor) { call(pour_mix_scale, raw(), factor); }

    double mass_g() const { return get<double>(pour_mix_mass, raw()); }

    double mass_g(const char *material) const { return get<double>(pour_mix_mass_of, raw(), material); }

    /// `phase` is `POUR_PHASE_LIQUID` or `POUR_PHASE_FUSED`.
    double volume_ml(std::int32_t phase = 0, double celsius = POUR_OMITTED) const {
        return get<double>(pour_mix_volume, raw(), phase, celsius);
    }

    double density_g_per_ml(std::int32_t phase = 0, double celsius = POUR_OMITTED,
                            double voids = POUR_OMITTED) const {
        return get<double>(pour_mix_density, raw(), phase, celsius, voids);
    }

    pour_mix *raw() noexcept { return handle_.get(); }
    const pour_mix *raw() const noexcept { return handle_.get(); }

private:
    explicit mix(pour_mix *raw) : handle_(raw) {}
    std::unique_ptr<pour_mix, detail::free_mix> handle_;
};

} // namespace pourwright

#endif
