// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/document_page.h"

#include <QStringList>

#include <algorithm>
#include <array>
#include <optional>
#include <utility>

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

/// Passed in the same words with the same figures in another test: told once, of all of them.
bool isSaidOfOther(const judging::Judged& judged, const judging::Judged& other) {
    return judged.subject.kind == reg::SubjectKind::Test && other.subject.kind == reg::SubjectKind::Test &&
           judged.finding.outcome == Outcome::Pass && judged.finding == other.finding;
}

bool isSaidOfAll(const DocumentPage& page, const judging::Judged& judged) {
    const auto tests = page.tests();
    return std::all_of(tests.begin(), tests.end(), [&](const reg::Test& test) {
        const auto& findings = page.findings();
        return std::any_of(findings.begin(), findings.end(), [&](const judging::Judged& other) {
            return other.subject == reg::subject(test.id) && isSaidOfOther(judged, other);
        });
    });
}

/// "Tightness", or "after the repair · Tightness" where there are several tests.
QString nameOf(const DocumentPage& page, const judging::Judged& judged) {
    const QString title = page.words().findingTitle(judged.finding.kind);
    for (const auto& test : page.tests()) {
        if (page.severalTests() && judged.subject == reg::subject(test.id)) {
            return page.testLabel(test) + QStringLiteral(" · ") + title;
        }
    }
    return title;
}

QString withOutcome(const DocumentPage& page, const QString& name, Outcome outcome) {
    return name + QStringLiteral(": ") + page.words().outcome(outcome);
}

/// Why something could not be there, where the finding itself only sees that it is missing; null otherwise.
const char* reasonForMissing(const DocumentPage& page, const judging::Judged& judged) {
    const auto& finding = judged.finding;
    const bool missing =
        finding.outcome == Outcome::NoVerdict && finding.why.say == rulebook::Say::ReadingMissing;
    if (!missing || finding.kind == FindingKind::LetBy) {
        return nullptr;
    }
    const bool stopped = record::stoppedByLetBy(page.findings(), judged.subject);
    if (finding.kind == FindingKind::Purge &&
        (stopped || record::foundLeaking(page.findings(), judged.subject))) {
        return QT_TRANSLATE_NOOP("Words", "Not purged, since the gas stays off.");
    }
    return stopped ? QT_TRANSLATE_NOOP("Words", "Not made, since let-by was found and stopped the test.")
                   : nullptr;
}

QString why(const DocumentPage& page, const judging::Judged& judged) {
    const char* reason = reasonForMissing(page, judged);
    return reason != nullptr ? page.say(reason) : page.words().sentence(judged.finding.why);
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

/// The bands by volume have nothing to add where tightness has said it already.
bool isSaidByTightness(const DocumentPage& page, const judging::Judged& judged) {
    return judged.finding.kind == FindingKind::VolumeBands &&
           std::any_of(page.findings().begin(), page.findings().end(), [&](const judging::Judged& j) {
               return j.finding.kind == FindingKind::Tightness && j.subject == judged.subject &&
                      j.finding.why == judged.finding.why && j.finding.outcome == judged.finding.outcome;
           });
}

/// What the line of a finding names limits for.
bool showsLimits(const DocumentPage& page, const judging::Judged& judged) {
    return !isSaidByTightness(page, judged) && reasonForMissing(page, judged) == nullptr;
}

bool isConfirmed(const rulebook::Entry& entry) {
    return entry.isKnown() && entry.provenance == rulebook::Provenance::Firm && !entry.confirmedBy.empty();
}

bool isWanted(const judging::Judged& judged, const Wanted& wanted) {
    return !wanted || wanted(judged);
}

/// Who confirmed the limits that a record used, and when: told once where that is the same for all of them.
struct Confirmed {
    std::string by;                    // empty: nobody, or several people
    std::optional<calendar::Date> on;  // none: not known, or several days
    bool sameDay = true;
};

Confirmed confirmedLimits(const DocumentPage& page, const Wanted& wanted) {
    Confirmed confirmed;
    bool isFirst = true;
    for (const auto& judged : page.findings()) {
        for (const auto& entry : judged.finding.limits) {
            if (!isConfirmed(entry) || !isWanted(judged, wanted) || !showsLimits(page, judged)) {
                continue;
            }
            if (!isFirst && entry.confirmedBy != confirmed.by) {
                return {};
            }
            confirmed.sameDay = confirmed.sameDay && (isFirst || entry.confirmedOn == confirmed.on);
            confirmed.by = entry.confirmedBy;
            confirmed.on = entry.confirmedOn;
            isFirst = false;
        }
    }
    return confirmed;
}

/// As Words::source(), with the name left to the end of the section where that names it for all limits.
QString sourceOf(const DocumentPage& page, const rulebook::Entry& entry, const Confirmed& confirmed) {
    if (confirmed.by.empty() || !isConfirmed(entry)) {
        return page.words().source(entry);
    }
    QStringList parts;
    for (const auto* part : {&entry.standard, &entry.clause}) {
        if (!part->empty()) {
            parts << qstring(*part);
        }
    }
    const QString when = confirmed.sameDay || !entry.confirmedOn
                             ? page.say(QT_TRANSLATE_NOOP("Words", "confirmed"))
                             : page.say(QT_TRANSLATE_NOOP("Words", "confirmed %1"),
                                        {page.words().shortDate(*entry.confirmedOn)});
    const QString standard = parts.join(QStringLiteral(", "));
    return standard.isEmpty() ? when : standard + QStringLiteral(" · ") + when;
}

/// Stands below the last finding, and so says of what it speaks.
std::string confirmedBy(const DocumentPage& page, const Confirmed& confirmed) {
    const QString by = qstring(confirmed.by);
    return confirmed.sameDay && confirmed.on
               ? page.text(QT_TRANSLATE_NOOP("Words",
                                             "Limits marked confirmed: by %1 from the firm's own copy, %2."),
                           {by, page.words().date(*confirmed.on)})
               : page.text(
                     QT_TRANSLATE_NOOP("Words", "Limits marked confirmed: by %1 from the firm's own copy."),
                     {by});
}

/// One line a source: "Let-by pressure: 7 to 10 mbar; Let-by time: at least 60 s · IGEM/UP/1B Edition 4 ·
/// published".
std::vector<std::string> sourcesOf(const DocumentPage& page, const rulebook::Finding& finding,
                                   const Confirmed& confirmed) {
    std::vector<std::pair<QString, QStringList>> lines;  // by source, in the order of the limits
    for (const auto& entry : finding.limits) {
        const QString source = sourceOf(page, entry, confirmed);
        auto line =
            std::find_if(lines.begin(), lines.end(), [&](const auto& l) { return l.first == source; });
        if (line == lines.end()) {
            line = lines.insert(lines.end(), {source, {}});
        }
        line->second << page.say(QT_TRANSLATE_NOOP("Words", "%1: %2"),
                                 {page.words().rule(entry.key.rule), page.words().ruleValue(entry)});
    }
    std::vector<std::string> sources;
    for (const auto& [source, limits] : lines) {
        sources.push_back(utf8(limits.join(QStringLiteral("; ")) + QStringLiteral(" · ") + source));
    }
    return sources;
}

/// The note only repeats what the reason says.
bool isRepeated(const rulebook::Sentence& note, const rulebook::Finding& finding) {
    using rulebook::Say;
    const bool purgeSaid = finding.why.say == Say::PurgeEnough || finding.why.say == Say::PurgeShort;
    return note.say == Say::PurgeVolumeNeeded && purgeSaid;
}

FindingLine lineOf(const DocumentPage& page, const judging::Judged& judged, const Confirmed& confirmed) {
    const auto& finding = judged.finding;
    FindingLine line;
    line.outcome = finding.outcome;
    const bool ofAll = page.severalTests() && isSaidOfAll(page, judged);
    const QString name = ofAll ? page.say(QT_TRANSLATE_NOOP("Words", "all tests")) + QStringLiteral(" · ") +
                                     page.words().findingTitle(finding.kind)
                               : nameOf(page, judged);
    line.title = utf8(withOutcome(page, name, finding.outcome));
    const QString measured = page.words().measuredAgainst(finding);
    const QString reason = why(page, judged);
    const bool saysMeasured = !finding.limit && reason.contains(measured);
    line.measured = saysMeasured ? std::string() : utf8(measured);
    line.why = utf8(reason);
    if (reasonForMissing(page, judged) != nullptr) {
        return line;  // limits of what could not be done are of no use
    }
    QStringList notes;
    for (const auto& note : finding.notes) {
        if (!isRepeated(note, finding)) {
            notes << page.words().sentence(note);
        }
    }
    if (!notes.isEmpty()) {
        line.notes.push_back(utf8(notes.join(u' ')));
    }
    line.sources = sourcesOf(page, finding, confirmed);
    return line;
}

/// Passed on what was seen or done, with nothing measured and no limit: told together at the end of the list.
/// What was found of an appliance is told with its name.
bool isPlainPass(const judging::Judged& judged) {
    const auto& finding = judged.finding;
    return judged.subject.kind != reg::SubjectKind::Appliance && finding.outcome == Outcome::Pass &&
           !finding.measured && finding.limits.empty() && finding.notes.empty();
}

FindingLine plainPasses(const DocumentPage& page, const Wanted& wanted) {
    FindingLine line;
    line.outcome = Outcome::Pass;
    line.title = utf8(withOutcome(page, page.say(QT_TRANSLATE_NOOP("Words", "Also seen to")), Outcome::Pass));
    QStringList sentences;
    for (const auto& judged : page.findings()) {
        const QString sentence = page.words().sentence(judged.finding.why);
        if (isPlainPass(judged) && isWanted(judged, wanted) && !sentences.contains(sentence)) {
            sentences << sentence;
        }
    }
    line.why = utf8(sentences.join(u' '));
    return line;
}

/// Belongs under the headline: what was found of the valve and the pipework, and whatever else kept it from a
/// pass.
bool isTold(const DocumentPage& page, const judging::Judged& judged) {
    const auto kind = judged.finding.kind;
    return reasonForMissing(page, judged) == nullptr &&
           (isOneOf(kTold, kind) || (isOneOf(kDecisive, kind) && judged.finding.outcome != Outcome::Pass));
}

/// Findings that say the same of one test are told together: "Let-by, Tightness: no verdict. …".
struct Told {
    QStringList names;
    Outcome outcome;
    QString sentence;
    reg::SubjectRef subject;
};

std::vector<Told> told(const DocumentPage& page) {
    std::vector<Told> lines;
    for (const auto& judged : page.findings()) {
        if (!isTold(page, judged)) {
            continue;
        }
        const Told line{{nameOf(page, judged)}, judged.finding.outcome, why(page, judged), judged.subject};
        const auto same = std::find_if(lines.begin(), lines.end(), [&](const Told& l) {
            return l.outcome == line.outcome && l.sentence == line.sentence && l.subject == line.subject;
        });
        if (same == lines.end()) {
            lines.push_back(line);
        } else {
            same->names << page.words().findingTitle(judged.finding.kind);
        }
    }
    return lines;
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
    for (const auto& line : told(page)) {
        head.details.push_back(utf8(withOutcome(page, line.names.join(QStringLiteral(", ")), line.outcome) +
                                    QStringLiteral(". ") + line.sentence));
    }
    return head;
}

FindingList findingList(const DocumentPage& page, const Wanted& wanted) {
    FindingList list;
    list.title = page.text(QT_TRANSLATE_NOOP("Words", "Findings, with the limits used"));
    const auto confirmed = confirmedLimits(page, wanted);
    const auto& findings = page.findings();
    for (auto judged = findings.begin(); judged != findings.end(); ++judged) {
        const bool said = page.severalTests() && isSaidOfAll(page, *judged) &&
                          std::any_of(findings.begin(), judged, [&](const judging::Judged& earlier) {
                              return isSaidOfOther(*judged, earlier);
                          });
        if (!said && isWanted(*judged, wanted) && !isPlainPass(*judged) &&
            !isSaidByTightness(page, *judged)) {
            list.findings.push_back(lineOf(page, *judged, confirmed));
        }
    }
    const auto plain = plainPasses(page, wanted);
    if (!plain.why.empty()) {
        list.findings.push_back(plain);
    }
    if (!confirmed.by.empty() && !list.findings.empty()) {
        list.findings.back().sources.push_back(confirmedBy(page, confirmed));
    }
    return list;
}

void addWhatToDo(const DocumentPage& page, std::vector<record::Block>& blocks) {
    using Emergency = Words::Emergency;
    if (!smells(page) && !stillLeaking(page)) {
        return;
    }
    const auto emergency = smells(page) ? Emergency::SmellOrEscape : Emergency::FailedTest;
    const auto steps = page.words().emergencySteps(
        emergency, page.file().installation.gas, page.file().premises.country, page.file().emergencyContacts);
    QStringList numbered;
    for (const auto& step : steps) {
        numbered << QString::number(numbered.size() + 1) + QStringLiteral(". ") + step;
    }
    blocks.emplace_back(record::Paragraph{page.text(QT_TRANSLATE_NOOP("Words", "What to do first")),
                                          utf8(numbered.join(u'\n')), true});
}

}  // namespace hearth::ui::words
