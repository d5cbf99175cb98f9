// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/big_firm.h"

#include <array>
#include <string_view>

namespace hearth::bench {
namespace {

constexpr std::array<std::string_view, 40> kFirstNames{
    "Alis",   "Bronwen", "Cedric",  "Dilys",  "Edmund", "Ffion", "Gwil",    "Hattie", "Idris",   "Jonas",
    "Kezia",  "Llŷr",    "Mabel",   "Nesta",  "Orla",   "Piers", "Quentin", "Rosa",   "Sion",    "Tamsin",
    "Una",    "Verity",  "Wilfred", "Yestin", "Zofia",  "Anwen", "Bertie",  "Ciara",  "Desmond", "Elin",
    "Fergus", "Grainne", "Hamish",  "Isla",   "Kofi",   "Leila", "Marta",   "Niamh",  "Priya",   "Rhys"};
constexpr std::array<std::string_view, 36> kNameStarts{
    "Ash",  "Beck", "Birch", "Brad", "Carl",  "Cold", "Dun",   "East",  "Elm",  "Fair", "Fen",  "Gold",
    "Hart", "Hawk", "Hazel", "High", "Kings", "Lang", "Lock",  "Marl",  "Mill", "Moor", "Nor",  "Oak",
    "Pem",  "Quin", "Rad",   "Sher", "Stan",  "Sted", "Thorn", "Under", "Wel",  "West", "Whit", "Wood"};
constexpr std::array<std::string_view, 24> kNameEnds{
    "ford",  "ley",  "ton", "well",   "combe", "worth", "bury",   "field", "brook", "croft", "hurst", "wick",
    "stead", "dale", "by",  "thorpe", "mere",  "gate",  "bridge", "mouth", "den",   "holt",  "shaw",  "more"};
constexpr std::array<std::string_view, 8> kOwnNames{"O'Brien", "Wiśniewska", "Ní Dhuill", "Okafor",
                                                    "ap Rhys", "MacAra",     "Adeyemi",   "St-Clair"};
constexpr std::array<std::string_view, 14> kStreetKinds{"Street", "Road",  "Lane", "Avenue",  "Close",
                                                        "Rise",   "Drive", "Way",  "Terrace", "Gardens",
                                                        "Court",  "Mews",  "Row",  "Crescent"};
constexpr std::array<std::string_view, 9> kOrganisations{
    "Homes", "Lettings", "Housing Association", "Properties", "Estates", "Care", "Bakery", "School", "Foods"};
constexpr std::array<std::string_view, 12> kMakes{"Emberline", "Torvald", "Calderstone", "Brightwell",
                                                  "Norrhem",   "Pellet",  "Ignis Works", "Farrow",
                                                  "Halden",    "Ostrava", "Quillan",     "Vesper"};
constexpr std::array<std::string_view, 10> kModels{"Combi", "System", "Compact", "Regular", "Hearth",
                                                   "Plus",  "Eco",    "Duo",     "Range",   "Slim"};

template <std::size_t Count>
std::string pick(Chance& chance, const std::array<std::string_view, Count>& from) {
    return std::string(from.at(chance.below(Count)));
}

// Each drawn in a statement of its own: the order within one expression is the compiler's choice.
std::string madeUp(Chance& chance) {
    std::string name = pick(chance, kNameStarts);
    name += pick(chance, kNameEnds);
    return name;
}

constexpr std::string_view kLetters = "ABDEFGHJLNPQRSTUWXYZ";  // of a postcode's last part

char letter(Chance& chance) {
    return kLetters[chance.below(kLetters.size())];
}

struct Range {
    std::string_view area;  // national
    std::string_view exchange;
    std::size_t free;  // digits
};
constexpr std::array<Range, 9> kRanges{{{"020", "7946 0", 3},
                                        {"0113", "496 0", 3},
                                        {"0121", "496 0", 3},
                                        {"0131", "496 0", 3},
                                        {"0161", "496 0", 3},
                                        {"0191", "498 0", 3},
                                        {"01632", "960", 3},
                                        {"07700", "900", 3},
                                        {"029", "2018 0", 3}}};

}  // namespace

std::uint64_t Chance::next() {
    m_state += 0x9E3779B97F4A7C15ULL;
    std::uint64_t z = m_state;
    z = (z ^ (z >> 30U)) * 0xBF58476D1CE4E5B9ULL;
    z = (z ^ (z >> 27U)) * 0x94D049BB133111EBULL;
    return z ^ (z >> 31U);
}

UuidBytes Chance::id() {
    constexpr std::uint64_t kFirst = 1'700'000'000'000;  // milliseconds since 1970
    constexpr std::uint64_t kVersion = 7;
    UuidBytes bytes{};
    const std::uint64_t head = ((kFirst + m_ids++) << 16U) | (kVersion << 12U) | (next() & 0xFFFU);
    const std::uint64_t tail = (next() >> 2U) | (1ULL << 63U);
    for (std::size_t i = 0; i < 8; ++i) {
        bytes.at(i) = static_cast<std::uint8_t>(head >> (56U - 8U * i));
        bytes.at(8 + i) = static_cast<std::uint8_t>(tail >> (56U - 8U * i));
    }
    return bytes;
}

std::string Chance::digits(std::size_t count) {
    std::string text;
    for (std::size_t i = 0; i < count; ++i) {
        text += static_cast<char>('0' + below(10));
    }
    return text;
}

std::string personName(Chance& chance) {
    std::string name = pick(chance, kFirstNames) + " ";
    name += chance.oneIn(12) ? pick(chance, kOwnNames) : madeUp(chance);
    return name;
}

std::string organisationName(Chance& chance) {
    std::string name = madeUp(chance) + " ";
    name += pick(chance, kOrganisations);
    return name;
}

std::string streetName(Chance& chance) {
    std::string name = madeUp(chance) + " ";
    name += pick(chance, kStreetKinds);
    return name;
}

std::size_t townCount() {
    return 240;
}

std::string townName(std::size_t number) {
    const std::size_t start = number % kNameStarts.size();
    const std::size_t end = (number / kNameStarts.size() + number) % kNameEnds.size();
    return std::string(kNameStarts.at(start)).append(kNameEnds.at(end));
}

std::string postcodeOf(std::size_t town, Chance& chance) {
    std::string code = "Q";
    code += kLetters[town % kLetters.size()];
    code += std::to_string(1 + town / kLetters.size());
    code += ' ';
    code += static_cast<char>('1' + chance.below(9));
    code += letter(chance);
    code += letter(chance);
    return code;
}

std::string telephone(Chance& chance) {
    const Range& range = kRanges.at(chance.below(kRanges.size()));
    const std::string area(range.area);
    std::string rest(range.exchange);
    rest += chance.digits(range.free);
    switch (chance.below(3)) {
        case 0:
            return "+44 " + area.substr(1) + " " + rest;
        case 1:
            return "(" + area + ") " + rest;
        default:
            return area + " " + rest;
    }
}

MadeBy applianceMake(Chance& chance) {
    constexpr std::size_t kSizes = 4;
    MadeBy made;
    made.make = pick(chance, kMakes);
    made.model = pick(chance, kModels) + " ";
    made.model += std::to_string(18 + 6 * chance.below(kSizes));
    return made;
}

std::string serialNumber(Chance& chance) {
    std::string serial;
    serial += letter(chance);
    serial += letter(chance);
    serial += "-";
    serial += chance.digits(7);
    if (chance.oneIn(2)) {
        serial += " " + chance.digits(2);
    }
    return serial;
}

std::string gcNumber(Chance& chance) {
    std::string number = chance.digits(2) + "-";
    number += chance.digits(3) + "-";
    number += chance.digits(2);
    return number;
}

}  // namespace hearth::bench
