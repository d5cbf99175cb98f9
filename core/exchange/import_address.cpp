// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/import_address.h"

#include "core/exchange/folded.h"
#include "core/register/forms.h"

#include <algorithm>
#include <array>
#include <vector>

namespace hearth::exchange {
namespace {

struct CountryName {
    std::string_view name;  // folded
    reg::Country country;
};
constexpr std::array kCountryNames{CountryName{"england", reg::Country::England},
                                   CountryName{"eng", reg::Country::England},
                                   CountryName{"lloegr", reg::Country::England},
                                   CountryName{"anglia", reg::Country::England},
                                   CountryName{"wales", reg::Country::Wales},
                                   CountryName{"cymru", reg::Country::Wales},
                                   CountryName{"walia", reg::Country::Wales},
                                   CountryName{"scotland", reg::Country::Scotland},
                                   CountryName{"yr alban", reg::Country::Scotland},
                                   CountryName{"alban", reg::Country::Scotland},
                                   CountryName{"szkocja", reg::Country::Scotland},
                                   CountryName{"northern ireland", reg::Country::NorthernIreland},
                                   CountryName{"n ireland", reg::Country::NorthernIreland},
                                   CountryName{"ni", reg::Country::NorthernIreland},
                                   CountryName{"gogledd iwerddon", reg::Country::NorthernIreland},
                                   CountryName{"irlandia polnocna", reg::Country::NorthernIreland}};

constexpr std::array<std::string_view, 5> kUnions{"uk", "united kingdom", "great britain", "gb",
                                                  "wielka brytania"};

/// Counties that stand after a town; those that are also a town's name are not here.
constexpr std::array<std::string_view, 49> kCounties{"avon",
                                                     "bedfordshire",
                                                     "berkshire",
                                                     "buckinghamshire",
                                                     "bucks",
                                                     "cambridgeshire",
                                                     "cheshire",
                                                     "cleveland",
                                                     "cornwall",
                                                     "cumbria",
                                                     "derbyshire",
                                                     "devon",
                                                     "dorset",
                                                     "county durham",
                                                     "co durham",
                                                     "east sussex",
                                                     "east yorkshire",
                                                     "essex",
                                                     "gloucestershire",
                                                     "greater london",
                                                     "greater manchester",
                                                     "gwynedd",
                                                     "hampshire",
                                                     "hants",
                                                     "herefordshire",
                                                     "hertfordshire",
                                                     "herts",
                                                     "kent",
                                                     "lancashire",
                                                     "lancs",
                                                     "leicestershire",
                                                     "lincolnshire",
                                                     "merseyside",
                                                     "middlesex",
                                                     "norfolk",
                                                     "north yorkshire",
                                                     "northamptonshire",
                                                     "northumberland",
                                                     "nottinghamshire",
                                                     "oxfordshire",
                                                     "shropshire",
                                                     "somerset",
                                                     "south yorkshire",
                                                     "staffordshire",
                                                     "suffolk",
                                                     "surrey",
                                                     "west midlands",
                                                     "west sussex",
                                                     "west yorkshire"};

template <class Names>
bool isAmong(const Names& names, std::string_view text) {
    return std::find(names.begin(), names.end(), text) != names.end();
}

std::vector<std::string> addressParts(std::string_view cell) {
    std::vector<std::string> parts;
    while (!cell.empty()) {
        const std::size_t end = std::min(cell.find_first_of(",;\r\n"), cell.size());
        if (auto part = tidied(cell.substr(0, end)); !part.empty()) {
            parts.push_back(std::move(part));
        }
        cell.remove_prefix(std::min(end + 1, cell.size()));
    }
    return parts;
}

/// Takes a postcode out of the end of a part, or the part where it is one: its last word or its last two.
std::optional<std::string> takePostcode(std::string& part) {
    std::size_t cut = part.size();
    for (int words = 1; words <= 2 && cut != std::string::npos && cut > 0; ++words) {
        cut = part.rfind(' ', cut - 1);
        const std::size_t from = cut == std::string::npos ? 0 : cut + 1;
        if (auto read = reg::postcodeIn(std::string_view(part).substr(from))) {
            part = tidied(part.substr(0, cut == std::string::npos ? 0 : cut));
            return read;
        }
    }
    return std::nullopt;
}

bool hasDigit(std::string_view text) {
    return text.find_first_of("0123456789") != std::string_view::npos;
}

/// "14", "14a", "Flat 2", "Apt 3B", "Unit 4": what goes with the part after it.
bool isNumberAlone(const std::string& part) {
    constexpr std::array<std::string_view, 7> kUnits{"flat", "apartment", "apt", "unit",
                                                     "room", "fflat",     "no"};
    const auto words = foldedWords(part);
    if (words.empty() || words.size() > 2 || !hasDigit(words.back())) {
        return words.size() == 2 && isAmong(kUnits, words.front());
    }
    return words.size() == 1 || isAmong(kUnits, words.front());
}

/// "Flat 2", "14", "High Street" are one line: "Flat 2, 14 High Street". The last part stays alone when it is
/// the town.
void joinNumbers(std::vector<std::string>& parts, bool withTown) {
    std::size_t numbers = 0;
    while (numbers + (withTown ? 2 : 1) < parts.size() && isNumberAlone(parts[numbers])) {
        ++numbers;
    }
    for (; numbers > 0; --numbers) {
        const bool plain = foldedWords(parts[numbers - 1]).size() == 1;
        parts[numbers - 1] += (plain ? " " : ", ") + parts[numbers];
        parts.erase(parts.begin() + static_cast<std::ptrdiff_t>(numbers));
    }
}

}  // namespace

std::optional<reg::Country> countryCalled(std::string_view text) {
    const std::string name = folded(text);
    for (const auto& [known, country] : kCountryNames) {
        if (known == name) {
            return country;
        }
    }
    return std::nullopt;
}

SplitAddress splitAddress(std::string_view cell, TownStands town) {
    SplitAddress split;
    auto parts = addressParts(cell);
    for (auto part = parts.rbegin(); part != parts.rend(); ++part) {
        if (const auto postcode = takePostcode(*part)) {
            split.address.postcode = *postcode;
            break;
        }
    }
    parts.erase(std::remove(parts.begin(), parts.end(), std::string()), parts.end());
    while (parts.size() > 1) {
        const auto country = countryCalled(parts.back());
        if (!country && !isAmong(kUnions, folded(parts.back())) &&
            !(parts.size() > 2 && isAmong(kCounties, folded(parts.back())))) {
            break;
        }
        split.country = country ? country : split.country;
        parts.pop_back();
    }
    if (parts.empty()) {
        return split;
    }
    const bool withTown = town == TownStands::Within;
    joinNumbers(parts, withTown);
    split.address.line1 = parts.front();
    parts.erase(parts.begin());
    if (withTown && !parts.empty()) {
        split.address.town = parts.back();
        parts.pop_back();
    }
    for (const auto& part : parts) {
        split.address.line2 += (split.address.line2.empty() ? "" : ", ") + part;
    }
    return split;
}

std::string premisesKey(const reg::Address& address) {
    std::string postcode = reg::postcodeIn(address.postcode).value_or(folded(address.postcode));
    if (postcode.empty()) {
        return {};
    }
    postcode.erase(std::remove(postcode.begin(), postcode.end(), ' '), postcode.end());
    std::string numbers;
    std::string words;
    for (const auto& word : foldedWords(address.line1 + ' ')) {
        (hasDigit(word) ? numbers : words) += ' ' + word;
    }
    return postcode + (numbers.empty() ? words : numbers);
}

}  // namespace hearth::exchange
