// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/due/book_page.h"

#include "ui/due/booking_doubts.h"
#include "ui/due/due_text.h"

#include <QHBoxLayout>
#include <QRegularExpression>
#include <QTime>

namespace hearth::ui::due {

using words::qstring;

namespace {

constexpr int kUsualMinutes = 60;
constexpr std::size_t kLinesShown = 8;  // of many premises: the rest is counted

QString lineFor(const QString& address, const store::DueIfChecked& what, const words::Words& words) {
    if (!what.next) {
        return BookPage::tr("%1: nothing is known that a deadline could count from.").arg(address);
    }
    QString text = BookPage::tr("%1: next deadline %2").arg(address, words.shortDate(*what.next));
    if (what.nextLatest) {
        text = BookPage::tr("%1: next deadline %2, perhaps %3")
                   .arg(address, words.shortDate(*what.next), words.shortDate(*what.nextLatest));
    }
    return what.timing ? text + QStringLiteral(" · ") + timingText(*what.timing) : text;
}

}  // namespace

std::optional<std::string> timeTyped(const QString& text) {
    static const QRegularExpression hour(QStringLiteral("^\\d{1,2}$"));
    const QString typed = text.trimmed();
    const auto time = hour.match(typed).hasMatch() ? QTime(typed.toInt(), 0)
                                                   : QTime::fromString(typed, QStringLiteral("HH:mm"));
    return typed.isEmpty()  ? std::optional(std::string())
           : time.isValid() ? std::optional(time.toString(QStringLiteral("HH:mm")).toStdString())
                            : std::nullopt;
}

std::optional<std::string> timeAfter(const std::string& from, int minutes) {
    const auto time = QTime::fromString(qstring(from), QStringLiteral("HH:mm"));
    const int end = time.isValid() ? time.msecsSinceStartOfDay() / 60000 + minutes : -1;
    constexpr int kDayMinutes = 24 * 60;
    return end < 0 || end >= kDayMinutes
               ? std::nullopt
               : std::optional(QTime(end / 60, end % 60).toString(QStringLiteral("HH:mm")).toStdString());
}

BookPage::BookPage(const DueContext& context, QWidget* parent) : ActionPage(context, tr("Book"), parent) {
    setObjectName(QStringLiteral("bookPage"));
    addFields();
    using shell::ButtonKind;
    const QKeySequence go(Qt::CTRL | Qt::Key_Return);
    m_book = addButton(tr("Book"), "bookNowButton", go, ButtonKind::Primary,
                       [this] { m_there ? move() : book(); });
    m_cancel = addButton(tr("Cancel the booking"), "cancelBookingButton", QKeySequence(Qt::CTRL | Qt::Key_D),
                         ButtonKind::Plain, [this] { cancelBooking(); });
    endPage();
}

void BookPage::addFields() {
    auto* fields = new shell::Fields(4, this);
    const auto add = [&](input::Editor* editor, const char* name, const QString& label, int span = 1) {
        editor->setObjectName(QString::fromLatin1(name));
        editor->setLabel(label);
        if (span > 0) {
            fields->add(editor, span);
        }
        connect(editor, &input::Editor::committed, this, &BookPage::look);
        return editor;
    };
    m_date = add(input::makeDateEditor(fields, [this] { return context().today(); }), "bookDate", tr("Day"));
    m_from = add(input::makeTimeEditor(fields), "bookFrom", tr("From"));
    auto* length = new QWidget(fields);  // of one it ends at a time, of many each takes so long
    auto* either = new QHBoxLayout(length);
    either->setContentsMargins(0, 0, 0, 0);
    m_until = add(input::makeTimeEditor(length), "bookUntil", tr("Until"), 0);
    m_each = add(input::makeTextEditor(length), "bookEach", tr("Minutes for each"), 0);
    either->addWidget(m_until);
    either->addWidget(m_each);
    fields->add(length);
    std::vector<input::ChoiceItem> engineers{{QString(), tr("not said yet")}};
    for (const auto& engineer : context().shell.store.engineers().value_or(std::vector<reg::Engineer>())) {
        engineers.push_back({qstring(engineer.id.text()), qstring(engineer.name)});
    }
    m_engineer = add(input::makeListEditor(fields, engineers), "bookEngineer", tr("Engineer"));
    m_note = add(input::makeTextEditor(fields), "bookNote", tr("Note"), 4);
    lines()->addWidget(fields);
    lines()->addWidget(shell::headingText(tr("If it is checked on that day"), this));
    m_whatIf = shell::bodyText({}, this);
    m_whatIf->setObjectName(QStringLiteral("whatIfText"));
    lines()->addWidget(m_whatIf);
    lines()->addWidget(shell::headingText(tr("What stands against it"), this));
    m_clashes = shell::bodyText({}, this);
    m_clashes->setObjectName(QStringLiteral("clashesText"));
    lines()->addWidget(m_clashes);
    m_doubtsHead = shell::headingText(tr("The engineer, on that day"), this);
    lines()->addWidget(m_doubtsHead);
    m_doubts = new shell::LineList(tr("Doubts about the engineer on that day"), {}, this);
    m_doubts->setObjectName(QStringLiteral("bookDoubts"));
    m_doubts->setWrapping(true);
    m_doubts->setGrowing(true);
    lines()->addWidget(m_doubts);
}

void BookPage::show(const std::vector<reg::PremisesId>& premises) {
    m_premises = premises;
    m_there.reset();
    const bool one = premises.size() == 1;
    QString below;
    if (one) {
        if (const auto file = context().due.dueFile(premises.front(), context().today()); file) {
            m_there = file->line.booking;
            if (file->line.deadline) {
                below = tr("Deadline %1, %2.")
                            .arg(context().shell.words.date(*file->line.deadline),
                                 stateWord(file->line).toLower());
            }
        }
    } else {
        below = tr("One after the other, in the order of the list.");
    }
    if (m_there) {
        below += QStringLiteral(" ") + tr("Booked %1.").arg(bookingText(*m_there, context().shell.words));
    }
    setHead(tr("Book: %1").arg(premisesText(context().shell.store, premises)), below);
    for (auto* field : {m_date, m_from, m_until, m_note}) {
        field->setText({});
        field->setProblem({});
    }
    m_each->setText(QString::number(kUsualMinutes));
    m_each->setVisible(!one);
    m_until->setVisible(one);
    if (m_there) {
        m_date->setText(qstring(calendar::isoText(m_there->date)));
        m_from->setText(qstring(m_there->from));
        m_until->setText(qstring(m_there->until));
        m_engineer->setText(m_there->engineer ? qstring(m_there->engineer->text()) : QString());
    }
    m_book->setWords(m_there ? tr("Move the booking") : tr("Book"));
    m_cancel->setVisible(m_there.has_value());
    look();
}

void BookPage::takeFocus() {
    shell::focusOn(m_date);
}

std::optional<calendar::Date> BookPage::day() const {
    const auto typed = shell::dateTyped(m_date->text(), context().today());
    return typed ? *typed : std::nullopt;
}

std::optional<int> BookPage::minutesEach() {
    bool good = false;
    const int minutes = m_each->text().trimmed().toInt(&good);
    constexpr int kLongest = 12 * 60;
    good = good && minutes > 0 && minutes <= kLongest;
    m_each->setProblem(good ? QString() : tr("A number of minutes, 1 to 720."));
    return good ? std::optional(minutes) : std::nullopt;
}

std::optional<std::vector<reg::Booking>> BookPage::bookings() {
    const auto date = day();
    m_date->setProblem(date || m_date->text().isEmpty() ? QString() : tr("Not a day."));
    const bool one = m_premises.size() == 1;
    const auto minutes = one ? std::optional(0) : minutesEach();
    if (!date || !minutes) {
        return std::nullopt;
    }
    std::vector<reg::Booking> made;
    const auto begins = timeTyped(m_from->text());
    const auto ends = timeTyped(m_until->text());
    m_from->setProblem(begins ? QString() : tr("Not a time: 9:30."));
    m_until->setProblem(ends ? QString() : tr("Not a time: 9:30."));
    if (!begins || !ends) {
        return std::nullopt;
    }
    std::string from = *begins;
    for (const auto& premises : m_premises) {
        reg::Booking booking;
        booking.premises = premises;
        booking.date = *date;
        booking.note = m_note->text().trimmed().toStdString();
        if (const auto engineer = uuidFromText(m_engineer->text().toStdString())) {
            booking.engineer = reg::EngineerId{*engineer};
        }
        booking.from = from;
        booking.until = *ends;
        if (!one) {
            booking.until.clear();
            if (!from.empty()) {
                const auto end = timeAfter(from, *minutes);
                if (!end) {
                    m_from->setProblem(
                        tr("They do not all fit into the day. Begin earlier, or choose fewer."));
                    return std::nullopt;
                }
                booking.until = *end;
                from = *end;
            }
        }
        made.push_back(booking);
    }
    return made;
}

QString BookPage::whatIf(calendar::Date day) const {
    const auto found = context().due.dueIfChecked(m_premises, day);
    if (!found) {
        return context().shell.words.error(found.error());
    }
    QStringList said;
    for (std::size_t i = 0; i < std::min(found->size(), kLinesShown); ++i) {
        const auto& one = (*found)[i];
        said << lineFor(premisesText(context().shell.store, {one.premises}), one, context().shell.words);
    }
    if (found->size() > kLinesShown) {
        said << tr("and %n more", nullptr, static_cast<int>(found->size() - kLinesShown));
    }
    return said.isEmpty() ? tr("Nothing is known of them.") : said.join(u'\n');
}

QString BookPage::clashesOf(const std::vector<reg::Booking>& bookings) const {
    QStringList said;
    std::size_t more = 0;
    for (const auto& booking : bookings) {
        const auto clashes = context().due.clashesOf(booking, context().today());
        if (!clashes) {
            return context().shell.words.error(clashes.error());
        }
        for (const auto& clash : *clashes) {
            QString line = clashText(clash, context().shell.words);
            if (bookings.size() > 1) {
                line = QStringLiteral("%1: %2").arg(premisesText(context().shell.store, {booking.premises}),
                                                    line);
            }
            if (said.size() < static_cast<int>(kLinesShown)) {
                said << line;
            } else {
                ++more;
            }
        }
    }
    if (more > 0) {
        said << tr("and %n more", nullptr, static_cast<int>(more));
    }
    return said.isEmpty() ? tr("Nothing.") : said.join(u'\n');
}

void BookPage::look() {
    const auto made = bookings();
    if (!made) {
        const QString wait = tr("Type a day first: 3/12, t for today, +7 for in a week.");
        m_whatIf->setText(day() ? QString() : wait);
        m_clashes->setText({});
        showDoubts({});
        return;
    }
    m_whatIf->setText(whatIf(made->front().date));
    auto meant = *made;
    if (m_there) {
        meant.front().id = m_there->id;
    }
    m_clashes->setText(clashesOf(meant));
    showDoubts(meant);
}

/// They are told and keep nobody from booking: a card is renewed, or somebody else goes.
void BookPage::showDoubts(const std::vector<reg::Booking>& bookings) {
    auto doubts = bookingDoubts(context().shell.store, context().shell.words, bookings, context().today());
    std::vector<shell::Line> said;
    if (doubts) {
        said = *std::move(doubts);
    } else {
        said.push_back({QStringLiteral("error"), context().shell.words.error(doubts.error())});
    }
    const bool any = !said.empty();
    m_doubts->setLines(std::move(said));
    m_doubts->setVisible(any);
    m_doubtsHead->setVisible(any);
}

void BookPage::book() {
    commit();
    const auto made = bookings();
    if (!made) {
        if (!day()) {
            m_date->setProblem(tr("Which day?"));
            takeFocus();
        }
        return;
    }
    const auto booked = context().due.book(*made);
    if (!booked) {
        tell(tr("Nothing was booked"), booked.error());
        return;
    }
    finish(tr("%n booked for %1.", nullptr, static_cast<int>(booked->size()))
               .arg(context().shell.words.shortDate(made->front().date)));
}

void BookPage::move() {
    commit();
    const auto made = bookings();
    if (!made) {
        return;
    }
    const auto& to = made->front();
    if (const auto moved = context().due.moveBooking(m_there->id, to.date, to.from, to.until, to.engineer);
        !moved) {
        tell(tr("The booking was not moved"), moved.error());
        return;
    }
    finish(tr("Moved to %1.").arg(context().shell.words.shortDate(to.date)));
}

void BookPage::cancelBooking() {
    const auto why = context().shell.dialogs.askText(this, tr("Cancel the booking"), tr("Why"));
    if (!why || !m_there) {
        return;
    }
    if (const auto gone = context().due.cancelBooking(m_there->id, why->trimmed().toStdString()); !gone) {
        tell(tr("The booking was not cancelled"), gone.error());
        return;
    }
    finish(tr("The booking is cancelled."));
}

}  // namespace hearth::ui::due
