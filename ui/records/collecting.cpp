// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/records/collecting.h"

#include "ui/shell/kit.h"
#include "ui/shell/progress.h"
#include "ui/shell/record_writing.h"

#include <QCoreApplication>

namespace hearth::ui::records {
namespace {

using words::qstring;

/// How they go out, in the order of the answers.
constexpr int kAsOne = 0;
constexpr int kPrinted = 2;

struct Collecting {
    Q_DECLARE_TR_FUNCTIONS(Collecting)
};

/// Nothing when the person stepped back, or was told why it can't be.
using Chosen = std::optional<store::RecordChoice>;

Chosen ofPerson(const shell::Context& context, QWidget* over) {
    const QString title = Collecting::tr("Records of whom?");
    const auto name =
        context.dialogs.askText(over, title, Collecting::tr("Name of the landlord or customer"));
    if (!name || name->trimmed().isEmpty()) {
        return std::nullopt;
    }
    const auto found = context.store.parties(name->toStdString());
    if (!found || found->empty()) {
        context.dialogs.tell(over, title,
                             found
                                 ? Collecting::tr("Nobody is called “%1”. Try a part of the name.").arg(*name)
                                 : context.words.error(found.error()));
        return std::nullopt;
    }
    int which = 0;
    if (found->size() > 1) {
        QStringList answers;
        constexpr std::size_t kMost = 8;
        for (std::size_t i = 0; i < std::min(found->size(), kMost); ++i) {
            answers << qstring((*found)[i].name);
        }
        which = context.dialogs.ask(over, title, Collecting::tr("Which of these?"), answers, 0);
    }
    store::RecordChoice choice;
    if (which >= 0) {
        choice.of = (*found)[static_cast<std::size_t>(which)].id;
    }
    return choice.of ? Chosen(choice) : std::nullopt;
}

Chosen ofPeriod(const shell::Context& context, QWidget* over) {
    const auto day = [&](const QString& label) -> std::optional<std::optional<calendar::Date>> {
        const auto typed = context.dialogs.askText(over, Collecting::tr("Records issued when?"), label);
        if (!typed) {
            return std::nullopt;
        }
        const auto date = shell::dateTyped(*typed, context.clock.today("Europe/London"));
        if (!date) {
            context.dialogs.tell(over, Collecting::tr("Nothing was written or printed"),
                                 context.words.error(date.error()));
            return std::nullopt;
        }
        return *date;
    };
    const auto from = day(Collecting::tr("First day (empty: from the beginning)"));
    const auto until = from ? day(Collecting::tr("Last day (empty: until today)")) : std::nullopt;
    if (!until) {
        return std::nullopt;
    }
    store::RecordChoice choice;
    choice.from = *from;
    choice.until = *until;
    return choice;
}

Chosen askChoice(const shell::Context& context, const QString& search, QWidget* over) {
    const QString those = search.trimmed().isEmpty()
                              ? Collecting::tr("All that count")
                              : Collecting::tr("Those found for “%1”").arg(search.trimmed());
    const int which = context.dialogs.ask(
        over, Collecting::tr("Several records at once"),
        Collecting::tr("As they were issued, the oldest first. Superseded and void ones stay out. Which?"),
        {those, Collecting::tr("Of a landlord or customer"), Collecting::tr("Of a period")}, 0);
    switch (which) {
        case 0: {
            store::RecordChoice choice;
            choice.search = search.toStdString();
            return choice;
        }
        case 1:
            return ofPerson(context, over);
        case 2:
            return ofPeriod(context, over);
        default:
            return std::nullopt;
    }
}

/// Its button or Escape stops.
class CollectingProgress : public shell::Progress {
  public:
    CollectingProgress(QWidget* over, const QString& doing)
        : shell::Progress(over, "collectingProgress", doing, Collecting::tr("Stop")) {}
};

using MaybeWritten = std::optional<Result<shell::RecordsWritten>>;

MaybeWritten writeInto(const shell::Context& context, const std::vector<store::RecordLine>& lines, bool asOne,
                       QWidget* over) {
    const auto target =
        asOne ? context.dialogs.saveFile(over, Collecting::tr("One PDF with bookmarks"),
                                         Collecting::tr("records.pdf"), Collecting::tr("PDF (*.pdf)"))
              : context.dialogs.chooseFolder(over, Collecting::tr("Which folder?"));
    if (!target) {
        return std::nullopt;
    }
    CollectingProgress progress(over, Collecting::tr("Writing the records…"));
    const auto step = [&](int done, int all) { return progress(done, all); };
    return asOne ? shell::writeAsOne(context.store, lines, *target, context.words, step)
                 : shell::writeAsFiles(context.store, lines, *target, step);
}

MaybeWritten printThem(const shell::Context& context, const std::vector<store::RecordLine>& lines,
                       QWidget* over) {
    // Made with the first record, after the printer's own dialog.
    std::optional<CollectingProgress> progress;
    return shell::printAsOneJob(context.store, lines, context.printing, [&](int done, int all) {
        if (!progress) {
            progress.emplace(over, Collecting::tr("Printing the records…"));
        }
        return (*progress)(done, all);
    });
}

/// What was done, and whether it was all.
QString told(int how, const shell::RecordsWritten& written) {
    const QString done = how == kPrinted
                             ? Collecting::tr("%n record(s) sent to the printer.", nullptr, written.records)
                             : Collecting::tr("%n record(s) written.", nullptr, written.records);
    return written.stopped ? Collecting::tr("Stopped. %1").arg(done) : done;
}

}  // namespace

void collectRecords(const shell::Context& context, const QString& search, QWidget* over) {
    const auto choice = askChoice(context, search, over);
    if (!choice) {
        return;
    }
    const QString nothing = Collecting::tr("Nothing was written or printed");
    const auto lines = context.store.recordsChosen(*choice);
    if (!lines || lines->empty()) {
        context.dialogs.tell(over, nothing,
                             lines ? Collecting::tr("There are no such records. Choose others.")
                                   : context.words.error(lines.error()));
        return;
    }
    const int how = context.dialogs.ask(
        over, Collecting::tr("Several records at once"),
        Collecting::tr("%n record(s). How?", nullptr, static_cast<int>(lines->size())),
        {Collecting::tr("One PDF with bookmarks"), Collecting::tr("Files in a folder, with their signatures"),
         Collecting::tr("On paper, as one print job")},
        0);
    if (how < 0) {
        return;
    }
    const auto written =
        how == kPrinted ? printThem(context, *lines, over) : writeInto(context, *lines, how == kAsOne, over);
    if (!written) {
        return;
    }
    if (!*written) {
        context.dialogs.tell(over, nothing, context.words.error(written->error()));
    } else if (const auto& failure = (*written)->failure) {
        context.dialogs.tell(over,
                             (*written)->records > 0 ? Collecting::tr("Not all records went out") : nothing,
                             told(how, **written) + QStringLiteral("\n") + context.words.error(*failure));
    } else {
        context.navigator.say(told(how, **written));
    }
}

}  // namespace hearth::ui::records
