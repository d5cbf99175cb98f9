// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/records/collecting.h"

#include "ui/shell/kit.h"
#include "ui/shell/record_writing.h"

#include <QCoreApplication>
#include <QProgressDialog>

namespace hearth::ui::records {
namespace {

using words::qstring;

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
            context.dialogs.tell(over, Collecting::tr("Nothing was written"),
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
        over, Collecting::tr("Write several records"),
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

/// Shown once it takes longer than a moment; its button or Escape stops.
class Progress {
  public:
    explicit Progress(QWidget* over)
        : m_dialog(Collecting::tr("Writing the records…"), Collecting::tr("Stop"), 0, 0, over) {
        m_dialog.setObjectName(QStringLiteral("collectingProgress"));
        m_dialog.setWindowModality(Qt::WindowModal);
        m_dialog.setAccessibleName(Collecting::tr("Writing the records…"));
    }
    bool operator()(int done, int all) {
        m_dialog.setMaximum(all);
        m_dialog.setValue(done);  // lets the window live, since it is modal
        return !m_dialog.wasCanceled();
    }

  private:
    QProgressDialog m_dialog;
};

Result<std::optional<shell::RecordsWritten>> writeChosen(const shell::Context& context,
                                                         const std::vector<store::RecordLine>& lines,
                                                         QWidget* over) {
    const int how =
        context.dialogs.ask(over, Collecting::tr("Write several records"),
                            Collecting::tr("%n record(s). How?", nullptr, static_cast<int>(lines.size())),
                            {Collecting::tr("One PDF with bookmarks"),
                             Collecting::tr("Files in a folder, with their signatures")},
                            0);
    const auto target =
        how == 0   ? context.dialogs.saveFile(over, Collecting::tr("One PDF with bookmarks"),
                                              Collecting::tr("records.pdf"), Collecting::tr("PDF (*.pdf)"))
        : how == 1 ? context.dialogs.chooseFolder(over, Collecting::tr("Which folder?"))
                   : std::nullopt;
    if (!target) {
        return std::nullopt;
    }
    Progress progress(over);
    const auto step = [&](int done, int all) { return progress(done, all); };
    const auto written = how == 0 ? shell::writeAsOne(context.store, lines, *target, context.words, step)
                                  : shell::writeAsFiles(context.store, lines, *target, step);
    return written ? Result<std::optional<shell::RecordsWritten>>(*written)
                   : tl::make_unexpected(written.error());
}

}  // namespace

void collectRecords(const shell::Context& context, const QString& search, QWidget* over) {
    const auto choice = askChoice(context, search, over);
    if (!choice) {
        return;
    }
    const QString title = Collecting::tr("Not all records were written");
    const auto lines = context.store.recordsChosen(*choice);
    if (!lines || lines->empty()) {
        context.dialogs.tell(over, Collecting::tr("Nothing was written"),
                             lines ? Collecting::tr("There are no such records. Choose others.")
                                   : context.words.error(lines.error()));
        return;
    }
    const auto written = writeChosen(context, *lines, over);
    if (!written) {
        context.dialogs.tell(over, title, context.words.error(written.error()));
    } else if (*written) {
        context.navigator.say(
            (*written)->stopped
                ? Collecting::tr("Stopped. %n record(s) written.", nullptr, (*written)->records)
                : Collecting::tr("%n record(s) written.", nullptr, (*written)->records));
    }
}

}  // namespace hearth::ui::records
