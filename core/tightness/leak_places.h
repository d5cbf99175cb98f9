// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/tightness/trace_fit.h"

#include <cstddef>
#include <span>
#include <vector>

/// Several tests of one installation with one branch after another shut off: where its leaks can be. Evidence
/// for whoever looks for them, never a verdict: what is not shown to leak is not tight.
namespace hearth::tightness {

/// The leak that a test found, and which places it reached (places are numbered by the caller, from nought).
/// All tests of one comparison are told at one gauge pressure.
struct ReachedLeak {
    std::vector<bool> reaches;
    Within95<quantity::Flow> leak;
};

/// Places that every test reached together: no test tells them apart.
struct LeakPlace {
    std::vector<std::size_t> places;
    quantity::Flow least;  // their leaks together; never below nought
    quantity::Flow most;
    [[nodiscard]] bool surelyLeaks() const { return least > quantity::Flow{}; }
};

enum class LeakPlacesSay {
    NothingToCompare,  // fewer than two tests, or all reached the same
    Disagree,          // no leaks could have made these readings
    OneLeaks,          // one place surely leaks
    SeveralLeak,       // more than one does
    Somewhere,         // something leaks, and it is open which
    NoneShown,         // no test shows a leak: which is not to say that there is none
};

struct LeakPlaces {
    LeakPlacesSay says = LeakPlacesSay::NothingToCompare;
    std::vector<LeakPlace> groups;  // in the order of their first places; none where nothing can be said
    std::vector<std::size_t> notReached;
};

/// What each place can leak so that each test's places together leak what that test's interval allows: leaks
/// of branches add, and none is below nought. A place's least and most are those of the linear programme that
/// the tests make. Each test's interval is of 95 %; that all hold at once is less sure.
/// Source: textbook (flows in parallel add; linear programming, solved by the simplex method of a library).
/// Checked: leak_places_test.cpp.
[[nodiscard]] LeakPlaces leakPlaces(std::span<const ReachedLeak> tests, std::size_t places);

/// Whether some leaks could have made all these readings; one test, or several that all reached the same,
/// too. Source: as leakPlaces(). Checked: the same.
[[nodiscard]] bool couldAllHold(std::span<const ReachedLeak> tests, std::size_t places);

}  // namespace hearth::tightness
