// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/premises/person_data.h"

#include "ui/shell/change_words.h"
#include "ui/shell/kit.h"
#include "ui/shell/paper_choice.h"
#include "ui/shell/saving.h"
#include "ui/words/kept_words.h"

#include <QCoreApplication>

namespace hearth::ui::premises {

using words::qstring;

namespace {

struct PersonData {
    Q_DECLARE_TR_FUNCTIONS(PersonData)
};

std::string utf8(const QString& text) {
    return text.toStdString();
}

record::CaptionedValue captioned(const QString& caption, const std::string& text) {
    return {utf8(caption), {text.empty() ? utf8(PersonData::tr("nothing is kept")) : text}, text.empty()};
}

std::string dateOr(const std::optional<calendar::Date>& date, const words::Words& words) {
    return date ? utf8(words.date(*date)) : std::string();
}

std::string inOneLine(const reg::Address& address) {
    QStringList parts{qstring(address.line1), qstring(address.line2), qstring(address.town),
                      qstring(address.postcode)};
    parts.removeAll(QString());
    return utf8(parts.join(QStringLiteral(", ")));
}

record::FieldGrid ownFields(const reg::Party& party, const words::Words& words) {
    record::FieldGrid grid;
    grid.title = utf8(PersonData::tr("Name and ways to reach them"));
    grid.columns = 2;
    grid.fields = {
        captioned(PersonData::tr("Name"), party.name),
        captioned(PersonData::tr("Kind"), utf8(words.partyKind(party.kind))),
        captioned(PersonData::tr("Address"), inOneLine(party.address)),
        captioned(PersonData::tr("Telephone"), party.telephone),
        captioned(PersonData::tr("E-mail"), party.email),
        captioned(PersonData::tr("How records are sent"), utf8(words::sendBy(words, party.sendBy))),
        captioned(PersonData::tr("Why they may be reminded"),
                  utf8(words::reminderBasis(words, party.reminderBasis))),
        captioned(PersonData::tr("Since"), dateOr(party.reminderSince, words)),
        captioned(PersonData::tr("Objected on"), dateOr(party.reminderWithdrawn, words)),
        captioned(PersonData::tr("Notes on them"), party.notes),
    };
    return grid;
}

record::Table tableOf(const QString& title, const QStringList& heads,
                      std::vector<std::vector<std::string>> rows) {
    record::Table table;
    table.title = utf8(title);
    for (const auto& head : heads) {
        table.columns.push_back({utf8(head), record::Align::Left, 1.0});
    }
    table.rows = std::move(rows);
    if (table.rows.empty()) {
        table.note = utf8(PersonData::tr("None."));
    }
    return table;
}

record::Table rolesTable(const store::PersonFile& file, const words::Words& words) {
    std::vector<std::vector<std::string>> rows;
    for (const auto& held : file.roles) {
        rows.push_back({utf8(words.role(held.role.kind)), inOneLine(held.address),
                        dateOr(held.role.since, words), dateOr(held.role.until, words)});
    }
    return tableOf(
        PersonData::tr("What they have to do with premises"),
        {PersonData::tr("As"), PersonData::tr("Premises"), PersonData::tr("From"), PersonData::tr("Until")},
        std::move(rows));
}

record::Table recordsTable(const store::PersonFile& file, const words::Words& words) {
    std::vector<std::vector<std::string>> rows;
    for (const auto& line : file.records) {
        Instant at{};
        const bool good = parseInstant(line.header.issuedAt, at);
        const auto kind = record::kindFromCode(line.header.kind);
        rows.push_back({line.header.record, kind ? utf8(words.recordKind(*kind)) : line.header.kind,
                        good ? utf8(shell::dayOf(words, at)) : line.header.issuedAt, line.address});
    }
    return tableOf(PersonData::tr("Issued records that name them"),
                   {PersonData::tr("Number"), PersonData::tr("Kind"), PersonData::tr("Issued"),
                    PersonData::tr("Premises")},
                   std::move(rows));
}

record::Table lettersTable(const store::PersonFile& file, const words::Words& words) {
    std::vector<std::vector<std::string>> rows;
    for (const auto& letter : file.letters) {
        rows.push_back({utf8(shell::dayOf(words, letter.at)), utf8(words::channel(words, letter.channel)),
                        letter.sentTo, letter.text});
    }
    return tableOf(
        PersonData::tr("What was sent to them"),
        {PersonData::tr("On"), PersonData::tr("How"), PersonData::tr("To"), PersonData::tr("Words")},
        std::move(rows));
}

record::Table papersTable(const store::PersonFile& file, const words::Words& words) {
    std::vector<std::vector<std::string>> rows;
    for (const auto& paper : file.attachments) {
        rows.push_back({paper.name, paper.note, utf8(shell::dayOf(words, paper.addedAt))});
    }
    return tableOf(PersonData::tr("Pictures and papers about them"),
                   {PersonData::tr("Name"), PersonData::tr("What it shows"), PersonData::tr("Added")},
                   std::move(rows));
}

record::Table changesTable(const store::PersonFile& file, const words::Words& words) {
    std::vector<std::vector<std::string>> rows;
    for (const auto& change : file.changes) {
        rows.push_back({utf8(shell::dayOf(words, change.at)), utf8(shell::changeSentence(words, change))});
    }
    auto table = tableOf(PersonData::tr("What was changed in their details"),
                         {PersonData::tr("On"), PersonData::tr("Change")}, std::move(rows));
    table.columns.back().weight = 4.0;
    return table;
}

QString staysSentence(const store::Erasure& erasure, const words::Words& words) {
    QStringList lines;
    for (const auto& stays : erasure.stays) {
        lines << (stays.what == store::Stays::What::Record
                      ? PersonData::tr("Record %1 stays until %2: it may be needed for a legal claim, and an "
                                       "issued record is never changed.")
                      : PersonData::tr("The letter (%1) stays until %2: it shows that they were told."))
                     .arg(qstring(stays.name), words.date(stays.until));
    }
    return lines.join(QStringLiteral("\n"));
}

}  // namespace

record::Document personDocument(const store::PersonFile& file, const reg::Firm& firm,
                                const words::Words& words) {
    record::Document document;
    document.kind = "person_data";
    document.language = words.language().toStdString();
    document.title = utf8(PersonData::tr("What we hold about you"));
    document.subtitle = file.party.name;
    document.firm = firm.name;
    document.issued = utf8(shell::dayOf(words, file.madeAt));
    document.banner = firm.demonstration ? utf8(PersonData::tr("Demonstration: not a real record")) : "";
    document.pageWord = utf8(PersonData::tr("page %1 of %2"));
    document.caution = utf8(PersonData::tr("Copies in backups are not listed; they go when the backups go."));
    document.blocks = {ownFields(file.party, words), rolesTable(file, words),  recordsTable(file, words),
                       lettersTable(file, words),    papersTable(file, words), changesTable(file, words)};
    return document;
}

void saveWhatIsHeld(const shell::Context& context, QWidget* over, reg::PartyId id) {
    const auto refuse = [&](const Error& error) {
        context.dialogs.tell(over, PersonData::tr("Nothing was saved"), context.words.error(error));
    };
    const auto file = context.store.heldAbout(id);
    const auto firm = context.store.firm();
    if (!file || !firm) {
        return refuse(file ? firm.error() : file.error());
    }
    auto document = personDocument(*file, *firm, context.words);
    document.paper = shell::firmsPaper(context.store);
    const auto pdf = paper::toPdf(document, {});
    if (!pdf) {
        return refuse(pdf.error());
    }
    const auto path =
        context.dialogs.saveFile(over, PersonData::tr("Save what is held about them"),
                                 PersonData::tr("What we hold.pdf"), PersonData::tr("PDF (*.pdf)"));
    if (!path) {
        return;
    }
    const QString bare =
        path->endsWith(QStringLiteral(".pdf"), Qt::CaseInsensitive) ? path->chopped(4) : *path;
    for (const auto& [name, bytes] : {std::pair(bare + QStringLiteral(".pdf"), pdf->toStdString()),
                                      std::pair(bare + QStringLiteral(".json"), store::personJson(*file))}) {
        if (const auto written = shell::writeFile(name, bytes); !written) {
            return refuse(written.error());
        }
    }
    context.navigator.say(PersonData::tr("Saved as %1.pdf, and as JSON beside it").arg(bare));
}

bool erasePerson(const shell::Context& context, QWidget* over, reg::PartyId id) {
    const auto plan = context.store.erasureOf(id);
    if (!plan) {
        context.dialogs.tell(over, PersonData::tr("Nothing was erased"), context.words.error(plan.error()));
        return false;
    }
    QString text = PersonData::tr(
                       "Name, address, numbers and notes go, and so do %1 letters, %2 pictures and "
                       "papers and what the list of changes says of them. Nothing brings that back. "
                       "Copies in backups stay until those backups are gone.")
                       .arg(plan->letters)
                       .arg(plan->attachments);
    if (!plan->stays.empty()) {
        text += QStringLiteral("\n\n") + staysSentence(*plan, context.words);
    }
    constexpr int kKeep = 0;
    constexpr int kErase = 1;
    const QString name = plan->party.name.empty() ? PersonData::tr("this person") : qstring(plan->party.name);
    if (context.dialogs.ask(over, PersonData::tr("Erase what is held about %1?").arg(name), text,
                            {PersonData::tr("Keep it"), PersonData::tr("Erase it")}, kKeep) != kErase) {
        return false;
    }
    if (const auto done = context.store.erase(id); !done) {
        context.dialogs.tell(over, PersonData::tr("Nothing was erased"), context.words.error(done.error()));
        return false;
    }
    context.navigator.say(PersonData::tr("Erased. The roles stay, without a name."));
    return true;
}

}  // namespace hearth::ui::premises
