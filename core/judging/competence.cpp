// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/judging/competence.h"

#include "core/register/appliance_kinds.h"
#include "core/rulebook/conclude.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <initializer_list>
#include <string>
#include <utility>

namespace hearth::judging {

using reg::Competence;
using reg::Item;
using rulebook::FindingKind;
using rulebook::Outcome;
using rulebook::Say;
namespace choice = reg::choice;

namespace {

constexpr std::string_view kHeatingTerm = "CENWAT";
constexpr std::string_view kFireTerm = "HTR1";
constexpr std::string_view kCookerTerm = "CKR1";
constexpr std::string_view kLpgTerm = "CCLP1";
constexpr std::string_view kCoreTerm = "CCN1";
constexpr std::string_view kCoreNonDomesticTerm = "COCN1";
constexpr std::string_view kChangeOverTerm = "CODNCO1";
constexpr std::string_view kCateringTerm = "COMCAT";
constexpr std::string_view kCoTerm = "CMDDA1";
constexpr std::string_view kLargerTerm = "TPCP1";

bool isWordCharacter(char letter) {
    return std::isalnum(static_cast<unsigned char>(letter)) != 0;
}

/// In capitals, without the digits at its end.
std::string stem(std::string_view word) {
    while (!word.empty() && std::isdigit(static_cast<unsigned char>(word.back())) != 0) {
        word.remove_suffix(1);
    }
    std::string capitals(word);
    std::transform(capitals.begin(), capitals.end(), capitals.begin(),
                   [](unsigned char letter) { return static_cast<char>(std::toupper(letter)); });
    return capitals;
}

std::vector<std::string_view> wordsOf(std::string_view text) {
    std::vector<std::string_view> words;
    for (std::size_t at = 0; at < text.size();) {
        const auto from =
            std::find_if(text.begin() + static_cast<std::ptrdiff_t>(at), text.end(), isWordCharacter);
        const auto to = std::find_if_not(from, text.end(), isWordCharacter);
        if (from == to) {
            break;
        }
        words.push_back(
            text.substr(static_cast<std::size_t>(from - text.begin()), static_cast<std::size_t>(to - from)));
        at = static_cast<std::size_t>(to - text.begin());
    }
    return words;
}

/// What is doubted of one visit, in the order in which it is told.
class CompetenceJudge {
  public:
    /// Of which appliances: those that something is said of, or every one that stands there.
    enum class Reach { WorkedOn, Standing };

    /// `seenFrom` is the day on which it is told: a card may still run then and not on the visit's.
    CompetenceJudge(const reg::VisitFile& file, const std::vector<Competence>& held, Reach reach,
                    calendar::Date seenFrom)
        : m_file(file),
          m_held(held),
          m_reach(reach),
          m_on(file.visit.date),
          m_seenFrom(seenFrom),
          m_visit(reg::subject(file.visit.id)) {}

    [[nodiscard]] std::vector<Judged> judge() && {
        if (m_file.engineer() == nullptr) {
            return {};
        }
        judgeCard();
        judgeWork();
        for (const auto& appliance : m_file.appliances) {
            if (m_reach == Reach::Standing || m_file.hasEntries(reg::subject(appliance.id))) {
                judgeAppliance(appliance);
            }
        }
        judgeAnalyser();
        return std::move(m_doubts);
    }

  private:
    void doubt(FindingKind kind, const reg::SubjectRef& on, Outcome outcome, rulebook::Sentence why,
               std::vector<Item> about = {}) {
        rulebook::Finding finding{kind};
        finding.outcome = outcome;
        finding.why = std::move(why);
        m_doubts.push_back({std::move(finding), on, std::move(about)});
    }

    [[nodiscard]] bool isStillToCome(calendar::Date lastDay) const { return m_seenFrom <= lastDay; }
    void judgeCard();
    void judgeWork();
    void judgeAppliance(const reg::Appliance& appliance);
    void judgeAnalyser();
    void require(std::initializer_list<std::string_view> anyOf, const reg::SubjectRef& on);

    const reg::VisitFile& m_file;
    const std::vector<Competence>& m_held;
    Reach m_reach;
    calendar::Date m_on;
    calendar::Date m_seenFrom;
    reg::SubjectRef m_visit;
    std::vector<Judged> m_doubts;
};

void CompetenceJudge::judgeCard() {
    const auto& engineer = *m_file.engineer();
    if (!engineer.cardExpires) {
        doubt(FindingKind::EngineerCard, m_visit, Outcome::NoVerdict,
              {Say::CardDateUnknown, {engineer.name}});
    } else if (*engineer.cardExpires < m_on) {
        doubt(FindingKind::EngineerCard, m_visit, Outcome::Fail,
              {isStillToCome(*engineer.cardExpires) ? Say::CardWillRunOut : Say::CardRunOut,
               {engineer.name, *engineer.cardExpires}});
    }
    if (m_held.empty()) {
        doubt(FindingKind::EngineerCategories, m_visit, Outcome::NoVerdict,
              {Say::CategoriesNotKept, {engineer.name}});
    }
}

/// One of the terms is to be held, and on the visit's day: of several categories the one that runs longest
/// counts, and one without a date is not known to run at all. The first is the usual one.
void CompetenceJudge::require(std::initializer_list<std::string_view> anyOf, const reg::SubjectRef& on) {
    const std::string named(*anyOf.begin());
    const Competence* best = nullptr;
    for (const auto& held : m_held) {
        const bool isMeant = std::any_of(anyOf.begin(), anyOf.end(), [&](std::string_view term) {
            return namesTerm(held.category, term);
        });
        const bool isBetter =
            best == nullptr || (held.expires && (!best->expires || *best->expires < *held.expires));
        if (isMeant && isBetter) {
            best = &held;
        }
    }
    if (best == nullptr) {
        doubt(FindingKind::EngineerCategories, on, Outcome::LookAgain, {Say::CategoryNotHeld, {named}});
    } else if (!best->expires) {
        doubt(FindingKind::EngineerCategories, on, Outcome::LookAgain,
              {Say::CategoryDateUnknown, {best->category}});
    } else if (*best->expires < m_on) {
        doubt(FindingKind::EngineerCategories, on, Outcome::Fail,
              {isStillToCome(*best->expires) ? Say::CategoryWillRunOut : Say::CategoryRunOut,
               {best->category, *best->expires}});
    }
}

void CompetenceJudge::judgeWork() {
    if (m_held.empty()) {
        return;
    }
    const auto isWork = [&](Item item) { return m_file.choiceOf(m_visit, item) == choice::kYes; };
    const auto gas = m_file.installation.gas;
    if (gas == rulebook::Gas::Propane || gas == rulebook::Gas::Butane) {
        require({kLpgTerm}, m_visit);
    }
    if (gas == rulebook::Gas::NaturalGas) {
        require({kCoreTerm, kCoreNonDomesticTerm, kChangeOverTerm}, m_visit);
    }
    if (isWork(Item::VisitRoomCo)) {
        require({kCoTerm}, m_visit);
    }
    if (isWork(Item::VisitLarger)) {
        require({kLargerTerm}, m_visit);
    }
}

void CompetenceJudge::judgeAppliance(const reg::Appliance& appliance) {
    if (m_held.empty() || !reg::isGasAppliance(appliance.kind)) {
        return;
    }
    const auto terms = categoriesFor(appliance.kind);
    if (terms.empty()) {
        doubt(FindingKind::EngineerCategories, reg::subject(appliance.id), Outcome::LookAgain,
              {Say::CategoryUnknown});
    }
    for (const auto term : terms) {
        require({term}, reg::subject(appliance.id));
    }
}

void CompetenceJudge::judgeAnalyser() {
    const auto* analyser = m_file.instrumentOf(m_visit, Item::VisitAnalyser);
    if (analyser == nullptr) {
        return;
    }
    if (!analyser->calibrationDue) {
        doubt(FindingKind::AnalyserCalibration, m_visit, Outcome::NoVerdict, {Say::AnalyserDateUnknown},
              {Item::VisitAnalyser});
    } else if (*analyser->calibrationDue < m_on) {
        doubt(FindingKind::AnalyserCalibration, m_visit, Outcome::Fail,
              {Say::AnalyserRunOut, {*analyser->calibrationDue}}, {Item::VisitAnalyser});
    }
}

}  // namespace

bool namesTerm(std::string_view category, std::string_view term) {
    const auto words = wordsOf(category);
    return !term.empty() && std::any_of(words.begin(), words.end(), [&](std::string_view word) {
        const bool sameDigits = stem(word).size() == word.size() || stem(term).size() == term.size() ||
                                word.substr(stem(word).size()) == term.substr(stem(term).size());
        return stem(word) == stem(term) && sameDigits;
    });
}

std::vector<std::string_view> categoriesFor(std::string_view kind) {
    constexpr std::array kHeating{
        choice::kCondensingBoiler,     choice::kNonCondensingBoiler,   choice::kBackBoiler,
        choice::kOpenFluedWaterHeater, choice::kRoomSealedWaterHeater, choice::kFluelessWaterHeater};
    constexpr std::array kFires{choice::kGasFire, choice::kDecorativeFire, choice::kFluelessSpaceHeater};
    constexpr std::array kCookers{choice::kOven, choice::kGrill, choice::kHotplate, choice::kRangeCooker};
    const auto isOneOf = [&](const auto& kinds) {
        return std::find(kinds.begin(), kinds.end(), kind) != kinds.end();
    };
    if (kind == choice::kBackBoilerFire) {
        return {kHeatingTerm, kFireTerm};
    }
    if (kind == choice::kCatering) {
        return {kCateringTerm};
    }
    if (reg::isLpgSystem(kind)) {
        return {kLpgTerm};
    }
    if (isOneOf(kHeating)) {
        return {kHeatingTerm};
    }
    if (isOneOf(kFires)) {
        return {kFireTerm};
    }
    return isOneOf(kCookers) ? std::vector{kCookerTerm} : std::vector<std::string_view>();
}

std::vector<Judged> judgeCompetence(const reg::VisitFile& file, const std::vector<Competence>& held) {
    return CompetenceJudge(file, held, CompetenceJudge::Reach::WorkedOn, file.visit.date).judge();
}

std::vector<Judged> judgeBooked(const reg::VisitFile& booked, const std::vector<Competence>& held,
                                calendar::Date today) {
    return CompetenceJudge(booked, held, CompetenceJudge::Reach::Standing, today).judge();
}

}  // namespace hearth::judging
