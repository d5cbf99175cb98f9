// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/due/overview_page.h"

#include "ui/due/due_files.h"
#include "ui/due/due_text.h"
#include "ui/shell/line_list.h"
#include "ui/shell/paper_choice.h"

#include <QPainter>

#include <algorithm>

namespace hearth::ui::due {

using look::Role;
using words::qstring;

namespace {

constexpr int kBarsHigh = 190;
constexpr int kBarFoot = 20;
constexpr int kBarHead = 18;

}  // namespace

MonthBars::MonthBars(QWidget* parent) : QWidget(parent) {
    setObjectName(QStringLiteral("monthBars"));
    setFixedHeight(kBarsHigh);
}

void MonthBars::show(const std::vector<store::DueMonth>& months) {
    m_months = months;
    QStringList said;
    for (std::size_t i = 0; i < months.size(); ++i) {
        said << tr("%1: %2, booked %3")
                    .arg(monthName(months[i], i == 0))
                    .arg(months[i].due)
                    .arg(months[i].booked);
    }
    setAccessibleName(tr("Deadlines by month. %1").arg(said.join(QStringLiteral("; "))));
    update();
}

void MonthBars::drawBar(QPainter& painter, const QRectF& slot, const store::DueMonth& month, bool isOverdue,
                        int most) const {
    const auto scheme = shell::currentScheme();
    const auto ink = [scheme](Role role) { return look::colour(role, scheme); };
    const double room = slot.height() - kBarFoot - kBarHead;
    const double high = room * month.due / most;
    const double foot = slot.bottom() - kBarFoot;
    const QRectF bar(slot.left() + slot.width() * 0.18, foot - high, slot.width() * 0.64, high);
    painter.fillRect(bar, ink(isOverdue ? Role::FailGround : Role::KeyGround));
    if (isOverdue) {
        painter.fillRect(bar, QBrush(ink(Role::Fail), Qt::BDiagPattern));
    }
    const double booked = room * month.booked / most;  // filled from the foot
    painter.fillRect(QRectF(bar.left(), foot - booked, bar.width(), booked), ink(Role::Key));
    painter.setPen(QPen(ink(isOverdue ? Role::Fail : Role::Key), 1));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(bar);
    painter.setFont(look::font(look::TypeRole::Small));
    painter.setPen(ink(isOverdue ? Role::Fail : Role::Ink));
    painter.drawText(QRectF(slot.left(), bar.top() - kBarHead, slot.width(), kBarHead), Qt::AlignCenter,
                     QString::number(month.due));
    painter.setPen(ink(Role::SoftInk));
    painter.drawText(QRectF(slot.left(), foot + 2, slot.width(), kBarFoot - 2), Qt::AlignCenter,
                     isOverdue ? monthName(month, true) : monthName(month, false).section(u' ', 0, 0));
}

void MonthBars::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), look::colour(Role::Sheet, shell::currentScheme()));
    if (m_months.empty()) {
        return;
    }
    int most = 1;
    for (const auto& month : m_months) {
        most = std::max(most, month.due);
    }
    const double wide = width() / static_cast<double>(m_months.size());
    for (std::size_t i = 0; i < m_months.size(); ++i) {
        drawBar(painter, QRectF(wide * static_cast<double>(i), 0, wide, height()), m_months[i], i == 0, most);
    }
}

OverviewPage::OverviewPage(const DueContext& context, QWidget* parent)
    : ActionPage(context, tr("Overview"), parent) {
    setObjectName(QStringLiteral("overviewPage"));
    lines()->addWidget(shell::headingText(tr("Deadlines by month"), this));
    m_bars = new MonthBars(this);
    lines()->addWidget(m_bars);
    lines()->addWidget(shell::softText(tr("Hatched: overdue. Filled: booked. Pale: not booked yet."), this));
    lines()->addWidget(shell::headingText(tr("How deadlines were kept"), this));
    m_kept = shell::bodyText({}, this);
    m_kept->setObjectName(QStringLiteral("keptText"));
    lines()->addWidget(m_kept);
    lines()->addWidget(shell::headingText(tr("By landlord"), this));
    m_landlords =
        new shell::LineList(tr("Landlords, most overdue first"), tr("No landlord is known yet."), this);
    m_landlords->setObjectName(QStringLiteral("landlordsList"));
    m_landlords->setMinimumHeight(150);
    lines()->addWidget(m_landlords, 1);
    connect(m_landlords, &shell::LineList::opened, this, [this](int row) {
        Q_EMIT landlordChosen(m_overview.landlords[static_cast<std::size_t>(row)].landlord);
    });
    addButton(tr("Print"), "printOverviewButton", QKeySequence(Qt::CTRL | Qt::Key_P),
              shell::ButtonKind::Plain, [this] { print(); });
    endPage();
}

void OverviewPage::show() {
    const auto found = context().due.dueOverview(context().today());
    setHead(tr("Overview"), found ? context().shell.words.date(context().today())
                                  : context().shell.words.error(found.error()));
    m_overview = found.value_or(store::DueOverview());
    m_bars->show(m_overview.months);
    m_kept->setText(keptText(m_overview.kept));
    std::vector<shell::Line> rows;
    for (const auto& one : m_overview.landlords) {
        shell::Line line;
        line.title = qstring(one.name);
        line.detail =
            tr("premises: %1 · open: %2 · booked: %3").arg(one.premises).arg(one.open).arg(one.booked);
        line.right = tr("overdue: %1").arg(one.overdue);
        rows.push_back(std::move(line));
    }
    m_landlords->setLines(std::move(rows));
}

void OverviewPage::takeFocus() {
    m_landlords->setFocus(Qt::OtherFocusReason);
}

void OverviewPage::print() {
    const auto firm = context().shell.store.firm();
    if (!firm) {
        tell(tr("Nothing was printed"), firm.error());
        return;
    }
    const auto paper = shell::firmsPaper(context().shell.store);
    const auto page = overviewDocument(*firm, m_overview, context().today(), paper, context().shell.words);
    if (const auto printed = context().shell.printing.print(page, {}, paper); !printed) {
        tell(tr("Nothing was printed"), printed.error());
    }
}

DayPage::DayPage(const DueContext& context, QWidget* parent) : ActionPage(context, tr("Day sheet"), parent) {
    setObjectName(QStringLiteral("dayPage"));
    auto* fields = new shell::Fields(2, this);
    m_date = input::makeDateEditor(fields, [this] { return this->context().today(); });
    m_date->setObjectName(QStringLiteral("dayDate"));
    m_date->setLabel(tr("Day"));
    m_engineers = {{QString(), tr("without an engineer")}};
    for (const auto& engineer : context.shell.store.engineers().value_or(std::vector<reg::Engineer>())) {
        m_engineers.push_back({qstring(engineer.id.text()), qstring(engineer.name)});
    }
    m_engineer = input::makeListEditor(fields, m_engineers);
    m_engineer->setObjectName(QStringLiteral("dayEngineer"));
    m_engineer->setLabel(tr("Engineer"));
    for (auto* field : {m_date, m_engineer}) {
        fields->add(field);
        connect(field, &input::Editor::committed, this, &DayPage::look);
    }
    m_engineer->setText(m_engineers.back().code);
    lines()->addWidget(fields);
    m_list = new shell::LineList(tr("Bookings of the day, in their order"), tr("Nothing is booked."), this);
    m_list->setObjectName(QStringLiteral("dayList"));
    m_list->setMinimumHeight(200);
    lines()->addWidget(m_list, 1);
    m_print = addButton(tr("Print the day sheet"), "printDayButton", QKeySequence(Qt::CTRL | Qt::Key_P),
                        shell::ButtonKind::Primary, [this] { print(); });
    endPage();
}

calendar::Date DayPage::day() const {
    const auto typed = shell::dateTyped(m_date->text(), context().today());
    return typed && *typed ? **typed : context().today();
}

void DayPage::show() {
    m_date->setText(qstring(calendar::isoText(context().today())));
    look();
}

void DayPage::look() {
    const auto engineer = uuidFromText(m_engineer->text().toStdString());
    const auto found =
        context().due.dayRound(engineer ? std::optional(reg::EngineerId{*engineer}) : std::nullopt, day());
    m_stops = found.value_or(std::vector<store::DayStop>());
    setHead(tr("Day sheet"),
            found ? context().shell.words.date(day()) : context().shell.words.error(found.error()));
    std::vector<shell::Line> rows;
    for (const auto& stop : m_stops) {
        shell::Line line;
        line.title = oneLineOf(stop.line.address);
        line.detail = qstring(stop.line.landlordName);
        line.right = stop.booking.from.empty() ? tr("any time") : qstring(stop.booking.from);
        line.rightDetail = stateWord(stop.line);
        rows.push_back(std::move(line));
    }
    m_list->setLines(std::move(rows));
    m_print->setEnabled(!m_stops.empty());
}

void DayPage::takeFocus() {
    shell::focusOn(m_date);
}

void DayPage::print() {
    const auto firm = context().shell.store.firm();
    if (!firm) {
        tell(tr("Nothing was printed"), firm.error());
        return;
    }
    QString name;
    for (const auto& one : m_engineers) {
        name = !one.code.isEmpty() && one.code == m_engineer->text() ? one.label : name;
    }
    const auto paper = shell::firmsPaper(context().shell.store);
    const auto page = dayDocument(*firm, name, day(), m_stops, paper, context().shell.words);
    if (const auto printed = context().shell.printing.print(page, {}, paper); !printed) {
        tell(tr("Nothing was printed"), printed.error());
    }
}

}  // namespace hearth::ui::due
