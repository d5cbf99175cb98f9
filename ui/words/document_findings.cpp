// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/document_page.h"

#include <QStringList>

#include <algorithm>
#include <array>

namespace hearth::ui::words {

namespace {

using record::FindingLine;
using record::FindingList;
using record::Headline;
using reg::Item;
using rulebook::FindingKind;
using rulebook::Outcome;

// What a record's headline is about, in the order of weight.
constexpr std::array kDecisive{FindingKind::SmellOnArrival, FindingKind::Scope, FindingKind::LetBy,
                               FindingKind::Tightness, FindingKind::IsolatedRetest};

bool isDecisive(FindingKind kind) {
    return std::find(kDecisive.begin(), kDecisive.end(), kind) != kDecisive.end();
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

/// The first decisive finding with the outcome of the whole: what the headline is about.
const judging::Judged* leading(const DocumentPage& page, Outcome outcome) {
    const auto& findings = page.input().findings;
    for (const auto kind : kDecisive) {
        const auto found = std::find_if(findings.begin(), findings.end(), [&](const judging::Judged& j) {
            return j.finding.kind == kind && j.finding.outcome == outcome;
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
            return page.say(QT_TRANSLATE_NOOP("Words", "The installation was found tight."));
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

bool smelled(const DocumentPage& page) {
    if (page.file().choiceOf(page.visit(), Item::SmellOnArrival) == reg::choice::kYes) {
        return true;
    }
    const auto tests = page.tests();
    return std::any_of(tests.begin(), tests.end(), [&](const reg::Test& test) {
        return page.file().choiceOf(reg::subject(test.id), Item::TestSmell) == reg::choice::kYes;
    });
}

/// The last test made leaked: an earlier one may have been put right since.
bool stillLeaking(const DocumentPage& page) {
    const auto tests = page.tests();
    return !tests.empty() && record::foundLeaking(page.input().findings, reg::subject(tests.back().id));
}

}  // namespace

Headline headline(const DocumentPage& page) {
    Headline head;
    head.outcome = judging::overall(page.input().findings);
    head.sentence = utf8(headSentence(page, head.outcome));
    for (const auto& judged : page.input().findings) {
        const bool passedOver =
            judged.finding.kind == FindingKind::Scope && judged.finding.outcome == Outcome::Pass;
        const bool quiet =
            judged.finding.kind == FindingKind::SmellOnArrival && judged.finding.outcome == Outcome::Pass;
        if (isDecisive(judged.finding.kind) && !passedOver && !quiet) {
            head.details.push_back(utf8(titleOf(page, judged) + QStringLiteral(". ") +
                                        page.words().sentence(judged.finding.why)));
        }
    }
    return head;
}

FindingList findingList(const DocumentPage& page) {
    FindingList list;
    list.title = page.text(QT_TRANSLATE_NOOP("Words", "Findings, with the limits used"));
    for (const auto& judged : page.input().findings) {
        list.findings.push_back(lineOf(page, judged));
    }
    return list;
}

void addWhatToDo(const DocumentPage& page, std::vector<record::Block>& blocks) {
    using Emergency = Words::Emergency;
    if (!smelled(page) && !stillLeaking(page)) {
        return;
    }
    const auto emergency = smelled(page) ? Emergency::SmellOrEscape : Emergency::FailedTest;
    const auto steps =
        page.words().emergencySteps(emergency, page.file().installation.gas, page.file().premises.country);
    blocks.emplace_back(record::Paragraph{page.text(QT_TRANSLATE_NOOP("Words", "What to do first")),
                                          utf8(steps.join(u'\n')), true});
}

}  // namespace hearth::ui::words
