// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/collect_command.h"

#include "app/files.h"
#include "app/stores.h"
#include "core/store/store.h"
#include "ui/shell/record_writing.h"

#include <QDir>

namespace hearth::app {
namespace {

using ui::words::qstring;

Result<std::optional<calendar::Date>> dayIn(const std::optional<QString>& text, const Desk& desk) {
    if (!text) {
        return std::optional<calendar::Date>();
    }
    const auto date = calendar::parseDate(text->toStdString(), desk.clock.today("Europe/London"));
    return date ? Result<std::optional<calendar::Date>>(*date) : tl::make_unexpected(date.error());
}

/// The one person that the name means; else says who there is.
tl::expected<reg::PartyId, Exit> personNamed(const store::Store& store, const QString& name,
                                             const Desk& desk) {
    const auto found = store.parties(name.toStdString());
    if (!found) {
        return tl::unexpected(complain(found.error(), desk));
    }
    if (found->size() == 1) {
        return found->front().id;
    }
    desk.console.complain(found->empty() ? tr("Nobody is called \"%1\".").arg(name)
                                         : tr("More than one is called \"%1\":").arg(name));
    for (const auto& party : *found) {
        desk.console.complain(qstring(party.name));
    }
    return tl::unexpected(Exit::Refused);
}

tl::expected<store::RecordChoice, Exit> choiceOf(const store::Store& store, const CommandLine& line,
                                                 const Desk& desk) {
    store::RecordChoice choice;
    choice.search = line.words.join(QLatin1Char(' ')).toStdString();
    choice.onlyThatCount = !line.all;
    const auto from = dayIn(line.from, desk);
    const auto until = dayIn(line.until, desk);
    if (!from || !until) {
        return tl::unexpected(complain(from ? until.error() : from.error(), desk));
    }
    choice.from = *from;
    choice.until = *until;
    if (line.of) {
        const auto person = personNamed(store, *line.of, desk);
        if (!person) {
            return tl::unexpected(person.error());
        }
        choice.of = *person;
    }
    return choice;
}

/// A file that is there is only written over when asked.
bool mayWrite(const CommandLine& line, const Desk& desk) {
    if (!line.to || line.replace || !QFileInfo::exists(*line.to)) {
        return true;
    }
    complain(
        Error{ErrorCode::FileUnwritable, {line.to->toStdString(), tr("it is there already").toStdString()}},
        desk);
    return false;
}

}  // namespace

Exit runCollect(const CommandLine& line, const Desk& desk) {
    const auto store = store::Store::open(storeOf(line), store::Access::WriteOrRead, desk.clock);
    if (!store) {
        return complain(store.error(), desk);
    }
    (*store)->actAs("command line");
    const auto choice = choiceOf(**store, line, desk);
    if (!choice) {
        return choice.error();
    }
    const auto lines = (*store)->recordsChosen(*choice);
    if (!lines) {
        return complain(lines.error(), desk);
    }
    if (lines->empty()) {
        desk.console.complain(tr("No such records."));
        return Exit::Refused;
    }
    if (!mayWrite(line, desk)) {
        return Exit::Trouble;
    }
    const auto goOn = [](int, int) { return true; };
    if (const auto made = line.into ? makeFolder(*line.into) : Result<void>(); !made) {
        return complain(made.error(), desk);
    }
    const auto written = line.to ? ui::shell::writeAsOne(**store, *lines, *line.to, desk.words, goOn)
                                 : ui::shell::writeAsFiles(**store, *lines, *line.into, goOn);
    if (!written) {
        return complain(written.error(), desk);
    }
    desk.console.say(tr("Records written: %1").arg(written->records));
    return written->failure ? complain(*written->failure, desk) : Exit::Done;
}

}  // namespace hearth::app
