// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/exporting.h"

#include "core/exchange/vcard.h"
#include "core/exchange/whole_json.h"
#include "core/exchange/whole_schema.h"
#include "ui/shell/due_writing.h"
#include "ui/words/exchange_words.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QSaveFile>

#include <limits>

namespace hearth::ui::shell {
namespace {

using exchange::ListKind;
using exchange::ListTable;
using words::qstring;

constexpr int kEvery = std::numeric_limits<int>::max();

QString exportingText(const char* text) {
    return QCoreApplication::translate("Exporting", text);
}

Result<ListTable> recordsList(const store::Store& store, const exchange::ListWording& word) {
    const auto lines = store.records({}, kEvery);
    if (!lines) {
        return tl::unexpected(lines.error());
    }
    std::map<store::RecordId, std::string> names;
    for (const auto& line : *lines) {
        names[line.id] = line.header.record + " / " + std::to_string(line.header.revision);
    }
    std::vector<exchange::RecordRow> rows;
    for (const auto& line : *lines) {
        const auto by = line.supersededBy ? names.find(*line.supersededBy) : names.end();
        rows.push_back({line.header.record, line.header.revision, line.header.kind, line.header.issuedAt,
                        line.address, line.customer,
                        std::string(line.letGo ? std::string_view() : rulebook::outcomeText(line.outcome)),
                        by == names.end() ? std::string() : by->second});
    }
    return exchange::recordsTable(rows, word);
}

Result<ListTable> changesList(const store::Store& store) {
    std::vector<exchange::ChangeRow> rows;
    const auto read = store.eachChange([&](const store::Change& change) {
        rows.push_back({instantText(change.at), change.by, change.table, change.row, change.field,
                        change.before.value_or(std::string()), change.after.value_or(std::string())});
    });
    if (!read) {
        return tl::unexpected(read.error());
    }
    return exchange::changesTable(rows);
}

Result<ListTable> tableOfList(ListKind kind, const store::Store& store, const Clock& clock,
                              const exchange::ListWording& word) {
    if (kind == ListKind::Records) {
        return recordsList(store, word);
    }
    if (kind == ListKind::Changes) {
        return changesList(store);
    }
    const auto rows = store.registerRows();
    if (!rows) {
        return tl::unexpected(rows.error());
    }
    switch (kind) {
        case ListKind::Premises:
            return exchange::premisesTable(*rows, clock.today(), word);
        case ListKind::People:
            return exchange::peopleTable(*rows, word);
        case ListKind::Appliances:
            return exchange::appliancesTable(*rows, word);
        case ListKind::Engineers:
            return exchange::engineersTable(*rows);
        case ListKind::Instruments:
            return exchange::instrumentsTable(*rows, word);
        default:
            return exchange::visitsTable(*rows, word);
    }
}

/// Whole or not at all.
Result<void> writeWhole(const QString& path, const std::string& bytes) {
    QSaveFile file(path);
    const bool written =
        file.open(QIODevice::WriteOnly) &&
        file.write(bytes.data(), static_cast<qint64>(bytes.size())) == static_cast<qint64>(bytes.size()) &&
        file.commit();
    return written ? Result<void>()
                   : fail(ErrorCode::FileUnwritable, {path.toStdString(), file.errorString().toStdString()});
}

bool keepFile(const Result<std::string>& bytes, const QString& proposed, const QString& filter,
              const Context& context, QWidget* over) {
    const QString title = exportingText(QT_TRANSLATE_NOOP("Exporting", "Write as a file"));
    if (!bytes) {
        context.dialogs.tell(over, title, context.words.error(bytes.error()));
        return false;
    }
    const auto path = context.dialogs.saveFile(over, title, proposed, filter);
    if (!path) {
        return false;
    }
    if (const auto written = writeWhole(*path, *bytes); !written) {
        context.dialogs.tell(over, title, context.words.error(written.error()));
        return false;
    }
    context.navigator.say(exportingText(QT_TRANSLATE_NOOP("Exporting", "Written to %1.")).arg(*path));
    return true;
}

}  // namespace

Result<std::string> listFile(ListKind kind, const store::Store& store, const Clock& clock,
                             const words::Words& words) {
    const auto table =
        tableOfList(kind, store, clock, [&](std::string_view vocabulary, std::string_view code) {
            return words::listWord(words, vocabulary, std::string(code)).toStdString();
        });
    if (!table) {
        return tl::unexpected(table.error());
    }
    return exchange::csvOf(*table, [&](const exchange::ListColumn& column) {
        return words::listHeading(words, column.code, column.number).toStdString();
    });
}

Result<std::string> peopleCards(const store::Store& store) {
    const auto rows = store.registerRows();
    if (!rows) {
        return tl::unexpected(rows.error());
    }
    return exchange::vCardsOf(rows->parties);
}

Result<void> writeWholeStore(const store::Store& store, const Clock& clock, const QString& path) {
    QSaveFile file(path);
    const auto unwritable = [&]() -> Result<void> {
        return fail(ErrorCode::FileUnwritable, {path.toStdString(), file.errorString().toStdString()});
    };
    if (!file.open(QIODevice::WriteOnly)) {
        return unwritable();
    }
    exchange::WholeWriter writer([&](std::string_view text) {
        const auto size = static_cast<qint64>(text.size());
        return file.write(text.data(), size) == size ? Result<void>() : unwritable();
    });
    auto written = writer.head(store.schema(), HEARTH_VERSION, instantText(clock.now()));
    if (written) {
        written = store.readWhole([&](const record::WholeTable& table) { return writer.table(table); },
                                  [&](const record::WholeTable& table, const record::WholeRow& row) {
                                      return writer.row(table, row);
                                  });
    }
    if (written) {
        written = writer.end();
    }
    return !written || file.commit() ? written : unwritable();
}

Result<std::string> wholeStoreSchema(const store::Store& store) {
    std::vector<record::WholeTable> tables;
    const auto read = store.readWhole(
        [&](const record::WholeTable& table) {
            tables.push_back(table);
            return Result<void>();
        },
        [](const record::WholeTable&, const record::WholeRow&) { return Result<void>(); });
    if (!read) {
        return tl::unexpected(read.error());
    }
    return exchange::wholeSchema(tables, store.schema());
}

Result<void> makeStoreFrom(const QString& path, const std::filesystem::path& store, const Clock& clock) {
    QFile file(path);
    const uchar* bytes =
        file.open(QIODevice::ReadOnly) && file.size() > 0 ? file.map(0, file.size()) : nullptr;
    if (bytes == nullptr) {
        return fail(ErrorCode::FileUnreadable, {path.toStdString(), file.errorString().toStdString()});
    }
    const std::string text(bytes, bytes + file.size());
    return store::Store::createFrom(store, clock, [&](record::WholeSink& sink) {
        return exchange::readWholeJson(text, sink, path.toStdString());
    });
}

bool exportList(ListKind kind, const Context& context, QWidget* over) {
    const auto code = exchange::codeOf(kind);
    return keepFile(
        listFile(kind, context.store, context.clock, context.words),
        QString::fromUtf8(code.data(), static_cast<qsizetype>(code.size())) + QStringLiteral(".csv"),
        exportingText(QT_TRANSLATE_NOOP("Exporting", "Spreadsheets (*.csv)")), context, over);
}

bool exportPeopleCards(const Context& context, QWidget* over) {
    return keepFile(peopleCards(context.store), QStringLiteral("people.vcf"),
                    exportingText(QT_TRANSLATE_NOOP("Exporting", "Address books (*.vcf)")), context, over);
}

namespace {

/// Each entry by itself: programs that watch a folder take over what is new.
Result<QString> writeEntries(const std::vector<exchange::CalendarEvent>& events, const QString& folder,
                             const Context& context) {
    const auto files = entryFiles(events, context.clock.now());
    if (!files) {
        return tl::unexpected(files.error());
    }
    for (const auto& file : *files) {
        if (auto written = writeWhole(QDir(folder).filePath(file.name), file.bytes); !written) {
            return tl::unexpected(written.error());
        }
    }
    return QCoreApplication::translate(
               "Exporting", QT_TRANSLATE_N_NOOP("Exporting", "%n entries written to %1, each a file."),
               nullptr, static_cast<int>(files->size()))
        .arg(folder);
}

Result<QString> writeCalendar(const std::vector<exchange::CalendarEvent>& events, const QString& path,
                              const Context& context) {
    return exchange::calendarOf(events, context.clock.now())
        .and_then([&](const std::string& bytes) { return writeWhole(path, bytes); })
        .map([&] {
            return QCoreApplication::translate("Exporting",
                                               QT_TRANSLATE_N_NOOP("Exporting", "%n entries written to %1."),
                                               nullptr, static_cast<int>(events.size()))
                .arg(path);
        });
}

}  // namespace

bool exportCalendar(const store::DueFilter& filter, const Context& context, QWidget* over) {
    const QString title = exportingText(QT_TRANSLATE_NOOP("Exporting", "Write as a calendar"));
    const auto events = dueEvents(context.store, filter, context.clock, context.words);
    if (!events) {
        context.dialogs.tell(over, title, context.words.error(events.error()));
        return false;
    }
    const int how = context.dialogs.ask(
        over, title,
        exportingText(QT_TRANSLATE_NOOP(
            "Exporting", "Deadlines as whole days, bookings at their times. Taken over again, they follow.")),
        {exportingText(QT_TRANSLATE_NOOP("Exporting", "One file")),
         exportingText(QT_TRANSLATE_NOOP("Exporting", "A folder, a file for each"))},
        0);
    const auto where = how == 0 ? context.dialogs.saveFile(
                                      over, title, QStringLiteral("checks.ics"),
                                      exportingText(QT_TRANSLATE_NOOP("Exporting", "Calendars (*.ics)")))
                       : how == 1 ? context.dialogs.chooseFolder(over, title)
                                  : std::nullopt;
    if (!where) {
        return false;
    }
    const auto written =
        how == 0 ? writeCalendar(*events, *where, context) : writeEntries(*events, *where, context);
    if (!written) {
        context.dialogs.tell(over, title, context.words.error(written.error()));
        return false;
    }
    context.navigator.say(*written);
    return true;
}

void chooseAndExport(const std::vector<ListKind>& kinds, const Context& context, QWidget* over) {
    QStringList answers;
    bool withPeople = false;
    for (const auto kind : kinds) {
        answers << words::listName(context.words, exchange::codeOf(kind));
        withPeople |= kind == ListKind::People;
    }
    if (withPeople) {
        answers << exportingText(QT_TRANSLATE_NOOP("Exporting", "People, for an address book"));
    }
    if (answers.size() == 1) {
        exportList(kinds.front(), context, over);
        return;
    }
    const int answer = context.dialogs.ask(
        over, exportingText(QT_TRANSLATE_NOOP("Exporting", "Write as a file")),
        exportingText(QT_TRANSLATE_NOOP("Exporting",
                                        "Lists are written for spreadsheets (CSV). Access notes stay out.")),
        answers, 0);
    if (answer < 0) {
        return;
    }
    const auto index = static_cast<std::size_t>(answer);
    if (index < kinds.size()) {
        exportList(kinds[index], context, over);
    } else {
        exportPeopleCards(context, over);
    }
}

KeyButton* exportButton(const std::vector<ListKind>& kinds, const Context& context, QWidget* parent) {
    auto* button = new KeyButton(exportingText(QT_TRANSLATE_NOOP("Exporting", "Write as a file")),
                                 QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_E), ButtonKind::Quiet, parent);
    button->setObjectName(QStringLiteral("exportButton"));
    QObject::connect(button, &QPushButton::clicked, button,
                     [kinds, context, button] { chooseAndExport(kinds, context, button); });
    return button;
}

}  // namespace hearth::ui::shell
