// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/document_page.h"

#include <QStringList>

#include <algorithm>
#include <array>
#include <optional>

namespace hearth::ui::words {

namespace {

using record::FindingLine;
using record::FindingList;
using record::Headline;
using reg::Item;
using rulebook::FindingKind;
using rulebook::Outcome;

// What a record's headline is about, in the order of weight.
constexpr std::array kDecisive{FindingKind::Scope,          FindingKind::LetBy,
                               FindingKind::Tightness,      FindingKind::IsolatedRetest,
                               FindingKind::SmellOnArrival, FindingKind::EditionChoice,
                               FindingKind::TestPressure,   FindingKind::TestTime};
// Told in the headline's details even when they pass.
constexpr std::array kTold{FindingKind::LetBy, FindingKind::Tightness, FindingKind::IsolatedRetest};

template <std::size_t N>
bool isOneOf(const std::array<FindingKind, N>& kinds, FindingKind kind) {
    return std::find(kinds.begin(), kinds.end(), kind) != kinds.end();
}

/// The last test that was made: it says how the installation was left.
std::optional<reg::SubjectRef> lastTest(const DocumentPage& page) {
    const auto tests = page.tests();
    return tests.empty() ? std::nullopt : std::optional(reg::subject(tests.back().id));
}

bool concernsLast(const DocumentPage& page, const judging::Judged& judged) {
    return judged.subject.kind != reg::SubjectKind::Test || judged.subject == lastTest(page);
}

QString titleOf(const DocumentPage& page, const judging::Judged& judged) {
    QString title = page.words().findingTitle(judged.finding.kind);
    for (const auto& test : page.tests()) {
        if (page.severalTests() && judged.subject == reg::subject(test.id)) {
            title = page.testLabel(test) + QStringLiteral(" · ") + title;
        }
    }
    return title + QStringLiteral(": ") + page.words().outcome(judged.finding.outcome);
}

/// The first decisive finding of the last test with the outcome of the whole: what the headline is about.
const judging::Judged* leading(const DocumentPage& page, Outcome outcome) {
    const auto& findings = page.findings();
    for (const auto kind : kDecisive) {
        const auto found = std::find_if(findings.begin(), findings.end(), [&](const judging::Judged& j) {
            return j.finding.kind == kind && j.finding.outcome == outcome && concernsLast(page, j);
        });
        if (found != findings.end()) {
            return &*found;
        }
    }
    return nullptr;
}

const char* failSentence(const judging::Judged* why) {
    const auto kind = why != nullptr ? why->finding.kind : FindingKind::Tightness;
    switch (kind) {
        case FindingKind::SmellOnArrival:
            return QT_TRANSLATE_NOOP("Words", "There was a smell of gas.");
        case FindingKind::Scope:
            return QT_TRANSLATE_NOOP("Words",
                                     "This installation lies outside the standard that it was tested to.");
        case FindingKind::LetBy:
            return QT_TRANSLATE_NOOP("Words", "The valve lets by: no tightness test could be made.");
        default:
            return QT_TRANSLATE_NOOP("Words",
                                     "The installation was not found tight. The gas stays off until it is.");
    }
}

QString headSentence(const DocumentPage& page, Outcome outcome) {
    const auto* why = leading(page, outcome);
    switch (outcome) {
        case Outcome::Pass:
            return page.severalTests()
                       ? page.say(
                             QT_TRANSLATE_NOOP("Words", "The installation was found tight at the last test."))
                       : page.say(QT_TRANSLATE_NOOP("Words", "The installation was found tight."));
        case Outcome::Fail:
            return page.say(failSentence(why));
        case Outcome::LookAgain:
            return page.say(
                QT_TRANSLATE_NOOP("Words", "Not yet a pass: something is to be looked at again."));
        case Outcome::NoVerdict:
            break;
    }
    return page.say(QT_TRANSLATE_NOOP("Words", "No verdict: the installation was not shown to be tight."));
}

std::vector<std::string> sourcesOf(const DocumentPage& page, const rulebook::Finding& finding) {
    std::vector<std::string> sources;
    for (const auto& entry : finding.limits) {
        sources.push_back(page.text(
            QT_TRANSLATE_NOOP("Words", "%1: %2 · %3"),
            {page.words().rule(entry.key.rule), page.words().ruleValue(entry), page.words().source(entry)}));
    }
    return sources;
}

FindingLine lineOf(const DocumentPage& page, const judging::Judged& judged) {
    FindingLine line;
    line.outcome = judged.finding.outcome;
    line.title = utf8(titleOf(page, judged));
    line.measured = utf8(page.words().measuredAgainst(judged.finding));
    line.why = utf8(page.words().sentence(judged.finding.why));
    for (const auto& note : judged.finding.notes) {
        line.notes.push_back(utf8(page.words().sentence(note)));
    }
    line.sources = sourcesOf(page, judged.finding);
    return line;
}

bool foundTight(const DocumentPage& page) {
    return std::any_of(page.findings().begin(), page.findings().end(), [&](const judging::Judged& j) {
        return j.finding.kind == FindingKind::Tightness && j.finding.outcome == Outcome::Pass &&
               j.subject == lastTest(page);
    });
}

/// A smell during the last test, or one on arrival that no tight test has cleared up since.
bool smells(const DocumentPage& page) {
    const auto last = lastTest(page);
    const bool inTest = last && page.file().choiceOf(*last, Item::TestSmell) == reg::choice::kYes;
    const bool onArrival = page.file().choiceOf(page.visit(), Item::SmellOnArrival) == reg::choice::kYes;
    return inTest || (onArrival && !foundTight(page));
}

/// The last test made leaked: an earlier one may have been put right since.
bool stillLeaking(const DocumentPage& page) {
    const auto last = lastTest(page);
    return last && record::foundLeaking(page.findings(), *last);
}

}  // namespace

Headline headline(const DocumentPage& page) {
    Headline head;
    head.outcome = record::outcomeOf(page.file(), page.findings());
    head.sentence = utf8(headSentence(page, head.outcome));
    for (const auto& judged : page.findings()) {
        const auto& finding = judged.finding;
        const bool tells = isOneOf(kTold, finding.kind) ||
                           (isOneOf(kDecisive, finding.kind) && finding.outcome != Outcome::Pass);
        if (tells) {
            head.details.push_back(
                utf8(titleOf(page, judged) + QStringLiteral(". ") + page.words().sentence(finding.why)));
        }
    }
    return head;
}

FindingList findingList(const DocumentPage& page) {
    FindingList list;
    list.title = page.text(QT_TRANSLATE_NOOP("Words", "Findings, with the limits used"));
    for (const auto& judged : page.findings()) {
        list.findings.push_back(lineOf(page, judged));
    }
    return list;
}

void addWhatToDo(const DocumentPage& page, std::vector<record::Block>& blocks) {
    using Emergency = Words::Emergency;
    if (!smells(page) && !stillLeaking(page)) {
        return;
    }
    const auto emergency = smells(page) ? Emergency::SmellOrEscape : Emergency::FailedTest;
    const auto steps =
        page.words().emergencySteps(emergency, page.file().installation.gas, page.file().premises.country);
    blocks.emplace_back(record::Paragraph{page.text(QT_TRANSLATE_NOOP("Words", "What to do first")),
                                          utf8(steps.join(u'\n')), true});
}

}  // namespace hearth::ui::words
