// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/firm/holidays_part.h"

#include "core/exchange/bank_holiday_file.h"

#include <QFile>
#include <QFileInfo>
#include <QHBoxLayout>

namespace hearth::ui::firm {

using words::qstring;

namespace {

constexpr int kMonthsAhead = 12;  // bookings are seldom made further ahead (common practice, no source)
constexpr qint64 kMostRead = 2 * 1024 * 1024;

QString divisionName(const std::string& key) {
    return key == "scotland"           ? HolidaysPart::tr("Scotland")
           : key == "northern-ireland" ? HolidaysPart::tr("Northern Ireland")
                                       : HolidaysPart::tr("England and Wales");
}

QString faultText(const exchange::HolidayFault& fault) {
    using exchange::HolidayDoubt;
    const QString detail = qstring(fault.detail);
    switch (fault.what) {
        case HolidayDoubt::TooLarge:
            return HolidaysPart::tr("It is larger than a list of bank holidays can be.");
        case HolidayDoubt::NotUnderstood:
            return detail.isEmpty()
                       ? HolidaysPart::tr("It is no list of bank holidays in a form that we read.")
                       : HolidaysPart::tr("What stands at “%1” was not understood.").arg(detail);
        case HolidayDoubt::DivisionMissing:
            return HolidaysPart::tr("It has nothing for %1.").arg(divisionName(fault.detail));
        case HolidayDoubt::DateUnreadable:
            return HolidaysPart::tr("“%1” is no date.").arg(detail);
        case HolidayDoubt::NameMissing:
            return HolidaysPart::tr("The day %1 has no name that can be shown.").arg(detail);
        case HolidayDoubt::Twice:
            return HolidaysPart::tr("It has one day twice: %1.").arg(detail);
        case HolidayDoubt::YearNotWhole:
            break;
    }
    return HolidaysPart::tr("Days of %1 are missing in it.").arg(detail);
}

}  // namespace

HolidaysPart::HolidaysPart(const shell::Context& context, QWidget* parent)
    : QWidget(parent),
      m_context(context),
      m_state(shell::bodyText({}, this)),
      m_asking(shell::bodyText({}, this)),
      m_take(new shell::KeyButton(tr("Take in a newer file"), shell::ButtonKind::Plain, this)),
      m_ours(new shell::KeyButton(tr("Back to those that we ship"), shell::ButtonKind::Quiet, this)) {
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(look::kGap);
    lines->addWidget(shell::headingText(tr("Bank holidays"), this));
    m_state->setObjectName(QStringLiteral("holidaysState"));
    lines->addWidget(m_state);
    m_asking->setObjectName(QStringLiteral("holidaysAsking"));
    m_asking->setInk(look::Role::LookAgain);
    lines->addWidget(m_asking);
    lines->addWidget(
        shell::softText(tr("For bookings alone: no deadline moves for one. The government publishes "
                           "them as a file (GOV.UK, “Bank holidays”, JSON)."),
                        this));
    auto* row = new QHBoxLayout;
    row->setSpacing(look::kGap);
    m_take->setObjectName(QStringLiteral("takeHolidaysButton"));
    m_ours->setObjectName(QStringLiteral("shippedHolidaysButton"));
    row->addWidget(m_take);
    row->addWidget(m_ours);
    row->addStretch(1);
    lines->addLayout(row);
    connect(m_take, &QPushButton::clicked, this, &HolidaysPart::take);
    connect(m_ours, &QPushButton::clicked, this, &HolidaysPart::backToOurs);
}

void HolidaysPart::refresh() {
    const auto table = m_context.store.bankHolidays();
    const bool isFirms = table && table->taken;
    m_state->setText(!table    ? m_context.words.error(table.error())
                     : isFirms ? tr("Known until the end of %1. From %2, taken in on %3.")
                                     .arg(QString::number(table->lastYear), qstring(table->source),
                                          m_context.words.date(*table->taken))
                               : tr("Known until the end of %1. Those that we ship: %2.")
                                     .arg(QString::number(table->lastYear), qstring(table->source)));
    const bool runsOut = table && calendar::isBeyond(*table, calendar::addMonths(today(), kMonthsAhead));
    m_asking->setText(runsOut
                          ? tr("They run out: bookings after %1 are held against none. Take in a newer file.")
                                .arg(table->lastYear)
                          : QString());
    m_asking->setVisible(runsOut);
    m_take->setEnabled(!m_context.store.isReadOnly());
    m_ours->setEnabled(!m_context.store.isReadOnly() && (isFirms || !table));
}

void HolidaysPart::refuse(const QString& why) {
    m_context.dialogs.tell(this, tr("The bank holidays were not taken in"),
                           tr("%1 Those in force stay as they were.").arg(why));
}

void HolidaysPart::take() {
    const QStringList files =
        m_context.dialogs.openFiles(this, tr("Take in bank holidays"), tr("Bank holidays (*.json *.txt)"));
    if (files.isEmpty()) {
        return;
    }
    QFile file(files.first());
    if (!file.open(QIODevice::ReadOnly)) {
        refuse(m_context.words.error(
            {ErrorCode::FileUnreadable, {files.first().toStdString(), file.errorString().toStdString()}}));
        return;
    }
    const auto table = exchange::readBankHolidayFile(
        file.read(kMostRead).toStdString(), QFileInfo(files.first()).fileName().toStdString(), today());
    if (!table) {
        refuse(faultText(table.error()));
        return;
    }
    if (const auto kept = m_context.store.saveBankHolidays(*table); !kept) {
        refuse(m_context.words.error(kept.error()));
        return;
    }
    refresh();
    m_context.navigator.say(
        tr("Taken in: bank holidays until %1. Another file takes their place.").arg(table->lastYear));
}

void HolidaysPart::backToOurs() {
    if (const auto kept = m_context.store.saveBankHolidays(std::nullopt); !kept) {
        refuse(m_context.words.error(kept.error()));
        return;
    }
    m_take->setFocus(Qt::OtherFocusReason);
    refresh();
    m_context.navigator.say(tr("The bank holidays that we ship are back."));
}

}  // namespace hearth::ui::firm
