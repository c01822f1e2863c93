// Every class of pourwright.hpp, right and wrong, and the vectors: wrapper BOOK ORDERS REQUESTS ANSWERS.
#include <cmath>
#include <cstdlib>
#include <fstream>
#include <iostream>
#include <iterator>
#include <string>
#include <type_traits>
#include <utility>

#include <pourwright.hpp>

namespace {

int failures = 0;

void check(bool holds, const char *what, int line) {
    if (!holds) {
        std::cerr << "wrapper.cpp:" << line << ": " << what << '\n';
        ++failures;
    }
}

#define CHECK(what) check((what), #what, __LINE__)

std::string read_file(const char *path) {
    std::ifstream file(path, std::ios::binary);
    if (!file) throw std::runtime_error(std::string(path) + " cannot be read.");
    return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

bool near(double found, double wanted) { return std::abs(found - wanted) <= 1e-12 * wanted; }

/// The status that `act` throws; POUR_OK where it does not.
template <typename Act>
std::int32_t thrown(Act act) {
    try {
        act();
    } catch (const pourwright::error &error) {
        CHECK(!error.faults().empty() && !error.faults()[0].help.empty());
        CHECK(error.json().rfind("{\"faults\":[", 0) == 0 && std::string(error.what()) != "");
        return error.status();
    }
    return POUR_OK;
}

// Handles move and are not copied: one owner, one free.
static_assert(std::is_move_constructible_v<pourwright::mix> && !std::is_copy_constructible_v<pourwright::mix>);
static_assert(std::is_move_assignable_v<pourwright::book> && !std::is_copy_assignable_v<pourwright::book>);
static_assert(std::is_move_constructible_v<pourwright::plan> && !std::is_copy_constructible_v<pourwright::plan>);

void numbers() {
    const pourwright::conversion cup("cup", "mL", POUR_MEASURES_METRIC);
    CHECK(cup(1.5) == 375.0);
    CHECK(thrown([&] { cup(-1); }) == POUR_REFUSED);
    CHECK(thrown([&] { cup(std::nan("")); }) == POUR_NOT_FINITE);
    CHECK(thrown([] { pourwright::conversion("cup", "g", POUR_MEASURES_METRIC); }) == POUR_REFUSED);
    const std::int64_t offsets[] = {0, 5, 9};
    std::int32_t statuses[2];
    const std::vector<double> amounts = pourwright::convert_texts({"1 cup6 oz", offsets, 2}, "mL", POUR_MEASURES_METRIC, statuses);
    CHECK(amounts.at(0) == 250 && amounts.at(1) != amounts.at(1));
    CHECK(statuses[0] == POUR_OK && statuses[1] == POUR_REFUSED);
    CHECK(thrown([&] { pourwright::convert_texts({"1 cup", offsets, 1}, "furlongs"); }) == POUR_REFUSED);
    CHECK(pourwright::get<double>(pour_mass_of_volume, 2.0, 3.0) == 6.0);
    CHECK(pourwright::get<pour_shots_result>(pour_shots, 24u, 5u, POUR_OMITTED, POUR_OMITTED).shots == 5);
    pour_shot_fill_input shot = POUR_SHOT_FILL_INPUT_INIT;
    CHECK(thrown([&] { pourwright::get<pour_shot_fill_result>(pour_shot_fill, &shot); }) == POUR_REFUSED);
    shot.cavities = 4;
    shot.cavity_volume_ml = 10;
    shot.cold_density_g_per_ml = 1;
    CHECK(near(pourwright::get<pour_shot_fill_result>(pour_shot_fill, &shot).shot_mass_g, 40.0));
    double column[] = {1, 2};
    pourwright::call(pour_convert_with_n, cup.raw(), std::size_t{2}, pour_column{column, 8}, pour_result_column{column, 8},
                     nullptr);
    CHECK(column[1] == 500.0);
}

void mixes(const pourwright::book &book) {
    pourwright::mix pot(book);
    pot.add("clear-base", 100);
    pourwright::mix drawn = pot.draw(25);
    CHECK(near(pot.mass_g(), 75.0) && near(drawn.mass_g("clear-base"), 25.0));
    pot.merge(drawn);
    pot.scale(2);
    CHECK(near(pot.mass_g(), 200.0) && pot.volume_ml() > 0 && pot.density_g_per_ml() > 1);
    CHECK(thrown([&] { pot.add("sand", 1); }) == POUR_REFUSED);
    CHECK(thrown([&] { pot.draw(201); }) == POUR_REFUSED);
    CHECK(thrown([&] { pot.merge(pot); }) == POUR_REFUSED);
    pourwright::mix moved = std::move(pot);
    CHECK(near(moved.mass_g(), 200.0));
    CHECK(thrown([&] { pot.mass_g(); }) == POUR_NULL);
    pour_material salt = POUR_MATERIAL_INIT;
    salt.name = "salt";
    salt.kind = POUR_KIND_SALT;
    salt.density_g_per_ml = 2;
    pourwright::mix own({salt});
    own.add("salt", 10);
    CHECK(near(own.volume_ml(), 5.0));
}

void budgets(const pourwright::book &book, const std::string &orders) {
    int asked = 0;
    pourwright::budget within;
    within.pots = 5;
    within.thousand_steps = 1;
    within.stop = [&] { return ++asked > 1000; };
    CHECK(book.plan(orders, within).json() == book.plan(orders).json());
    within.pots = 4;
    CHECK(thrown([&] { book.plan(orders, within); }) == POUR_OVER_BUDGET);

    const std::string key = "\"pieces\": ";
    const std::string long_day = std::string(orders).replace(orders.find(key), key.size(), key + "1000");
    within = {};
    asked = 1000;
    within.stop = [&] { return ++asked > 1000; };
    CHECK(thrown([&] { book.plan(long_day, within); }) == POUR_STOPPED);
    within.stop = []() -> bool { throw std::out_of_range("the host's own"); };
    try {
        book.plan(long_day, within);
        CHECK(false);
    } catch (const std::out_of_range &) {
    }
}

void requests(const pourwright::book &book, const pourwright::plan &plan) {
    const std::string formula = R"({"calculate":"formula","formulas":["dusk","plain"],"base_amount":"1 cup"})";
    const std::string record = R"({"calculate":"record","actuals":{"format":"pourwright/1.0","pots":{}}})";
    CHECK(book.request(formula).rfind(R"({"result":{"calculate":"formula",)", 0) == 0);
    CHECK(plan.request(formula) == book.request(formula));
    const auto lines = book.request_lines(std::string(formula) + "\nnot JSON\n");
    CHECK(lines.refused == 1 && lines.text.rfind(book.request(formula) + "\n{\"faults\"", 0) == 0);
    CHECK(pourwright::request_lines(formula).refused == 1 && pourwright::request_lines("").text.empty());
    const pourwright::plan again = pourwright::plan::from_json(plan.json());
    CHECK(again.json() == plan.json() && again.sheet() == plan.sheet() && again.notes() == plan.notes());
    CHECK(again.request(record) == plan.request(record));
    CHECK(thrown([&] { book.request(record); }) == POUR_REFUSED);
    CHECK(thrown([&] { plan.request("{}"); }) == POUR_REFUSED);
    CHECK(thrown([] { pourwright::plan::from_json("{}"); }) == POUR_REFUSED);
    CHECK(thrown([] { pourwright::plan::from_json("\xff"); }) == POUR_NOT_UTF8);
}

void answers() {
    const std::string request = R"({"calculate":"convert","amount":"1 1/4 cup","to":"mL"})";
    CHECK(pourwright::answer(request) == pourwright::request(request));
    CHECK(pourwright::answer("{").rfind(R"({"faults":[{"code":"not-json",)", 0) == 0);
    CHECK(pourwright::schema("orders").find(R"("$schema":)") != std::string::npos);
    CHECK(thrown([] { pourwright::schema("shop"); }) == POUR_REFUSED);
}

void vectors(const std::string &requests_path, const std::string &answers_path) {
    std::ifstream requests(requests_path), answers(answers_path);
    std::string request, answer, all;
    int count = 0;
    while (std::getline(requests, request) && std::getline(answers, answer)) {
        std::string found;
        try {
            found = pourwright::request(request);
        } catch (const pourwright::error &error) {
            found = error.json();
        }
        ++count;
        all += found + '\n';
        if (found != answer) {
            std::cerr << requests_path << ':' << count << "\n  " << found << "\n  not\n  " << answer << '\n';
            ++failures;
        }
    }
    CHECK(count > 100 && !std::getline(answers, answer));
    // Where it is set, the answers are written there: tests/doors.
    const char *folder = std::getenv("POURWRIGHT_ANSWERS");
    if (folder != nullptr && *folder != '\0') {
        std::ofstream file(std::string(folder) + "/cpp.requests.jsonl", std::ios::binary);
        CHECK(bool(file << all));
    }
}

} // namespace

int main(int argc, char **argv) {
    if (argc != 5) return 2;
    pourwright::check_version();
    numbers();
    const pourwright::book book(read_file(argv[1]));
    mixes(book);
    const std::string orders = read_file(argv[2]);
    const pourwright::plan plan = book.plan(orders);
    CHECK(plan.sheet().find("ORDER OF WORK") != std::string::npos && plan.json().front() == '{');
    // The same plan by the request door, with the documents that it was made from.
    const std::string asked = pourwright::request(R"({"calculate":"plan","book":)" + read_file(argv[1])
                                                  + R"(,"orders":)" + orders + "}");
    CHECK(asked == R"({"result":{"calculate":"plan",)" + plan.json().substr(1) + "}");
    CHECK(thrown([&] { book.plan("[]"); }) == POUR_REFUSED);
    CHECK(thrown([] { pourwright::book("\xff"); }) == POUR_NOT_UTF8);
    budgets(book, orders);
    requests(book, plan);
    answers();
    vectors(argv[3], argv[4]);
    if (failures != 0) std::cerr << "wrapper: " << failures << " checks failed\n";
    return failures != 0;
}
