// Plans a day: day BOOK.json ORDERS.json prints the bench sheet, or the faults of the two files.
//
// c++ -std=c++17 day.cpp $(pkg-config --cflags --libs pourwright) -o day
#include <fstream>
#include <iostream>
#include <iterator>
#include <string>

#include <pourwright.hpp>

namespace {

std::string read_file(const char *path) {
    std::ifstream file(path, std::ios::binary);
    if (!file) throw std::runtime_error(std::string(path) + " cannot be read.");
    return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

} // namespace

int main(int argc, char **argv) {
    if (argc != 3) {
        std::cerr << "Usage: day BOOK.json ORDERS.json\n";
        return 2;
    }
    try {
        pourwright::check_version();
        const pourwright::book book(read_file(argv[1]));
        std::cout << book.plan(read_file(argv[2])).sheet() << '\n';
        return 0;
    } catch (const pourwright::error &error) {
        for (const pourwright::fault &fault : error.faults()) {
            std::cerr << fault.path << ": " << fault.message << ' ' << fault.help << " [" << fault.code << "]\n";
        }
        return 1;
    } catch (const std::exception &error) {
        std::cerr << error.what() << '\n';
        return 2;
    }
}
