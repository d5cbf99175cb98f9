// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/due/evidence_file.h"

#include "core/calendar/duties.h"
#include "core/store/record_pictures.h"
#include "ui/due/due_text.h"

#include <QCoreApplication>

#include <algorithm>

namespace hearth::ui::due {

using store::StoryKind;
using words::qstring;

namespace {

struct EvidenceText {
    Q_DECLARE_TR_FUNCTIONS(EvidenceText)
};

std::string evidenceUtf8(const QString& text) {
    return text.toStdString();
}

Result<std::vector<record::Picture>> photographsOf(const store::Store& store, const UuidBytes& owner) {
    const auto attachments = store.attachmentsOf(owner);
    if (!attachments) {
        return tl::unexpected<Error>(attachments.error());
    }
    std::vector<record::Picture> pictures;
    for (const auto& one : *attachments) {
        if (!store::isPicture(one)) {
            continue;
        }
        auto bytes = store.attachmentBytes(one.id);
        if (!bytes) {
            return tl::unexpected<Error>(bytes.error());
        }
        pictures.push_back({{}, one.note, one.digest, one.mediaType, std::move(*bytes)});
    }
    return pictures;
}

Result<void> addResults(const store::Store& store, reg::PremisesId premises,
                        std::vector<EvidenceEvent>& events) {
    const auto letters = store.letters(premises);
    const auto attempts = store.accessAttempts(premises);
    if (!letters || !attempts) {
        return tl::unexpected<Error>(letters ? attempts.error() : letters.error());
    }
    for (auto& one : events) {
        for (const auto& letter : *letters) {
            if (letter.id.bytes == one.event.row) {
                one.result = letter.result;
            }
        }
        for (const auto& attempt : *attempts) {
            if (attempt.id.bytes == one.event.row) {
                one.nextStep = attempt.nextStep;
                one.nextOn = attempt.nextOn;
            }
        }
    }
    return {};
}

bool hasWords(const EvidenceEvent& one) {
    const auto kind = one.event.kind;
    return (kind == StoryKind::Letter || kind == StoryKind::Call) && !one.event.detail.empty();
}

/// "No access, 3 Nov 2026 at 14:10"
QString namedEvent(const EvidenceEvent& one, const words::Words& words) {
    const QString what = storyTitle(one.event);
    const QString day = words.shortDate(one.event.date);
    return one.event.at
               ? EvidenceText::tr("%1, %2 at %3").arg(what, day, qstring(wallTimeText(*one.event.at)))
               : EvidenceText::tr("%1, %2").arg(what, day);
}

/// How, by whom or to whom, and what came of it; of letters and calls all but their words.
QString howText(const EvidenceEvent& one, const words::Words& words) {
    const auto& event = one.event;
    QStringList parts;
    if (event.kind == StoryKind::Letter || event.kind == StoryKind::Call) {
        const auto channel = reg::channelFromCode(event.code).value_or(reg::Channel::Other);
        parts << (event.by.empty()
                      ? channelWord(channel)
                      : EvidenceText::tr("by %1 to %2").arg(channelWord(channel), qstring(event.by)));
    } else {
        parts << storyDetail(event, words);
    }
    if (!one.result.empty()) {
        parts << EvidenceText::tr("came of it: %1").arg(qstring(one.result));
    }
    if (!one.nextStep.empty()) {
        parts << EvidenceText::tr("next: %1").arg(qstring(one.nextStep));
    }
    if (one.nextOn) {
        parts << EvidenceText::tr("on %1").arg(words.shortDate(*one.nextOn));
    }
    if (hasWords(one)) {
        parts << EvidenceText::tr("word for word below");
    }
    if (!one.photographs.empty()) {
        parts << EvidenceText::tr("photograph below");
    }
    parts.removeAll(QString());
    return parts.join(QStringLiteral("; "));
}

record::FieldGrid evidenceHead(const Evidence& evidence, const words::Words& words) {
    const auto& line = evidence.file.line;
    const auto absent = [](const QString& caption) {
        return record::CaptionedValue{
            evidenceUtf8(caption), {evidenceUtf8(EvidenceText::tr("not known"))}, true};
    };
    const auto dated = [&](const QString& caption, const std::optional<calendar::Date>& day) {
        return day ? record::CaptionedValue{evidenceUtf8(caption), {evidenceUtf8(words.date(*day))}}
                   : absent(caption);
    };
    const auto named = [&](const QString& caption, const std::string& name) {
        return name.empty() ? absent(caption) : record::CaptionedValue{evidenceUtf8(caption), {name}};
    };
    const auto counted = [](const QString& caption, std::size_t count) {
        return record::CaptionedValue{evidenceUtf8(caption), {std::to_string(count)}};
    };
    record::FieldGrid grid;
    grid.fields = {
        named(EvidenceText::tr("Landlord"), line.landlordName),
        named(EvidenceText::tr("Agent"), line.agentName),
        {evidenceUtf8(EvidenceText::tr("State")), {evidenceUtf8(stateWord(line.state))}},
        dated(EvidenceText::tr("Last check"), line.lastCheck),
        dated(EvidenceText::tr("Deadline of the next"), line.deadline),
        counted(EvidenceText::tr("Letters and calls since the last check"), line.letters.size()),
        counted(EvidenceText::tr("Attempts without access since the last check"), line.attempts.size())};
    if (line.latest) {
        grid.fields[4].lines.push_back(
            evidenceUtf8(EvidenceText::tr("look again: perhaps only by %1").arg(words.date(*line.latest))));
    }
    return grid;
}

/// Three attempts change what goes to the landlord, never what is to be done.
QString comesNext(calendar::NextStep step) {
    using calendar::NextStep;
    return step == NextStep::TryAgain || step == NextStep::TryAgainAndRecord
               ? EvidenceText::tr("Try again and tell the landlord")
               : stepWord(step);
}

/// What inspectors look for, which is no verdict, and what comes next whatever was done so far.
record::Statements whatItShows(const Evidence& evidence) {
    record::Statement next{evidenceUtf8(EvidenceText::tr("What comes next")),
                           evidenceUtf8(comesNext(evidence.file.step)),
                           {},
                           {}};
    record::Statements block;
    if (evidence.file.line.duty == calendar::CheckDuty::Let) {
        block.statements.push_back(
            {evidenceUtf8(EvidenceText::tr("What this is worth")),
             evidenceUtf8(
                 EvidenceText::tr("At least three attempts are what inspectors look for. They are no "
                                  "safe harbour: a court decides on the facts.")),
             {},
             {evidenceUtf8(EvidenceText::tr(
                  "A landlord has to show that all reasonable steps were taken. Keep every letter. Nobody "
                  "may use force to get in.")),
              evidenceUtf8(
                  EvidenceText::tr("Source: HSE, “How far do I need to go if the tenant prevents access "
                                   "for a gas safety check?”"))}});
        next.details.push_back(evidenceUtf8(EvidenceText::tr(
            "However many attempts were made, the next step stays: try again and tell the landlord.")));
    }
    block.statements.push_back(std::move(next));
    return block;
}

record::Table inOrderOfTime(const Evidence& evidence, calendar::Date today, const words::Words& words) {
    record::Table table;
    table.title = evidenceUtf8(EvidenceText::tr("What was done, in order of time"));
    table.columns = {
        {evidenceUtf8(EvidenceText::tr("No.")), record::Align::Right, 0.5},
        {evidenceUtf8(EvidenceText::tr("Day")), record::Align::Left, 1.2},
        {evidenceUtf8(EvidenceText::tr("Time")), record::Align::Left, 0.7},
        {evidenceUtf8(EvidenceText::tr("What")), record::Align::Left, 2.0},
        {evidenceUtf8(EvidenceText::tr("By whom, how, and what came of it")), record::Align::Left, 4.0}};
    int number = 0;
    for (const auto& one : evidence.events) {
        QString what = storyTitle(one.event);
        if (one.event.date > today) {
            what = EvidenceText::tr("%1 (to come)").arg(what);
        }
        table.rows.push_back({std::to_string(++number), evidenceUtf8(words.shortDate(one.event.date)),
                              one.event.at ? wallTimeText(*one.event.at) : std::string(), evidenceUtf8(what),
                              evidenceUtf8(howText(one, words))});
    }
    return table;
}

/// Letters and calls word for word, under the number that they have in the table.
void addWords(const Evidence& evidence, const words::Words& words, record::Document& page) {
    for (std::size_t i = 0; i < evidence.events.size(); ++i) {
        const auto& one = evidence.events[i];
        if (hasWords(one)) {
            page.blocks.emplace_back(record::Paragraph{
                evidenceUtf8(
                    EvidenceText::tr("No. %1, word for word: %2").arg(i + 1).arg(namedEvent(one, words))),
                one.event.detail, false});
        }
    }
}

void addPhotographs(const Evidence& evidence, const words::Words& words, record::Document& page) {
    record::Pictures block;
    block.title = evidenceUtf8(EvidenceText::tr("Photographs"));
    for (std::size_t i = 0; i < evidence.events.size(); ++i) {
        for (auto picture : evidence.events[i].photographs) {
            picture.of = evidenceUtf8(
                EvidenceText::tr("No. %1: %2").arg(i + 1).arg(namedEvent(evidence.events[i], words)));
            block.pictures.push_back(std::move(picture));
        }
    }
    if (!block.pictures.empty()) {
        page.blocks.emplace_back(std::move(block));
    }
}

}  // namespace

Result<Evidence> gatherEvidence(const store::Store& store, reg::PremisesId premises, calendar::Date today) {
    auto firm = store.firm();
    auto file = store.dueFile(premises, today);
    auto story = store.storyOf(premises, today);
    if (!firm || !file || !story) {
        return tl::unexpected<Error>(!firm ? firm.error() : !file ? file.error() : story.error());
    }
    Evidence evidence{std::move(*firm), std::move(*file), {}};
    for (auto& event : *story) {
        EvidenceEvent one;
        one.event = std::move(event);
        if (one.event.kind == StoryKind::NoAccess || one.event.kind == StoryKind::Situation) {
            auto pictures = photographsOf(store, one.event.row);
            if (!pictures) {
                return tl::unexpected<Error>(pictures.error());
            }
            one.photographs = std::move(*pictures);
        }
        evidence.events.push_back(std::move(one));
    }
    if (auto added = addResults(store, premises, evidence.events); !added) {
        return tl::unexpected<Error>(added.error());
    }
    return evidence;
}

record::Document evidenceDocument(const Evidence& evidence, calendar::Date today, record::Paper paper,
                                  const words::Words& words) {
    record::Document page;
    page.kind = "due_evidence";
    page.language = evidenceUtf8(words.language().left(2));
    page.title = evidenceUtf8(EvidenceText::tr("What was done for the gas safety check"));
    page.subtitle = evidenceUtf8(oneLineOf(evidence.file.line.address));
    page.firm = evidence.firm.name;
    page.paper = paper;
    page.issued = evidenceUtf8(words.date(today));
    page.pageWord = evidenceUtf8(words.say("page %1 of %2"));
    if (evidence.firm.demonstration) {
        page.banner = evidenceUtf8(EvidenceText::tr("Demonstration: nothing here is real"));
    }
    page.blocks.emplace_back(evidenceHead(evidence, words));
    page.blocks.emplace_back(whatItShows(evidence));
    page.blocks.emplace_back(inOrderOfTime(evidence, today, words));
    addWords(evidence, words, page);
    addPhotographs(evidence, words, page);
    return page;
}

}  // namespace hearth::ui::due
