// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/trace_taker.h"

#include "core/exchange/csv.h"
#include "ui/shell/kit.h"
#include "ui/visit/chosen_table.h"
#include "ui/visit/part_view.h"

#include <QHBoxLayout>

#include <array>

namespace hearth::ui::visit {

using exchange::TraceColumn;
using exchange::TraceFault;
using quantity::UnitCode;
using quantity::UnitFamily;

namespace {

const QString kNone = QStringLiteral("none");

QString codeOfColumn(const std::optional<TraceColumn>& column) {
    return column ? QString::number(column->at) : kNone;
}

QString codeOfUnit(const std::optional<TraceColumn>& column) {
    return column && column->unit ? words::qstring(std::string(quantity::unitText(*column->unit))) : kNone;
}

/// What a reading's column is named by: its heading or its first cell.
QString columnName(std::size_t at, const std::string& cell) {
    return QStringLiteral("%1: %2").arg(at + 1).arg(words::qstring(cell).left(30));
}

}  // namespace

TraceTaker::TraceTaker(const SheetContext& context, QWidget* parent)
    : QWidget(parent), m_context(context), m_lines(new QVBoxLayout(this)) {
    m_lines->setContentsMargins(0, 0, 0, 0);
    m_lines->setSpacing(look::kGap / 2);
    hide();
}

void TraceTaker::chooseFile() {
    if (const auto table = chooseTable(m_context.window, this)) {
        show(table->name, table->bytes);
    }
}

void TraceTaker::show(const QString& name, const std::string& bytes) {
    m_name = name;
    m_bytes = bytes;
    const auto table = exchange::readCsv(bytes);
    m_firstRow = table.rows.empty() ? std::vector<std::string>() : table.rows.front().cells;
    m_guess = exchange::guessTraceColumns(m_firstRow);
    build();
    readAgain();
    QWidget::show();
    Q_EMIT stopsChanged();
    m_take->setFocus(Qt::OtherFocusReason);
}

std::vector<input::ChoiceItem> TraceTaker::columnChoices(bool withNone) const {
    std::vector<input::ChoiceItem> choices;
    if (withNone) {
        choices.push_back({kNone, tr("none")});
    }
    for (std::size_t i = 0; i < m_firstRow.size(); ++i) {
        choices.push_back({QString::number(i), columnName(i, m_firstRow[i])});
    }
    return choices;
}

input::Editor* TraceTaker::addChoice(const QString& name, const QString& label,
                                     const std::vector<input::ChoiceItem>& choices, const QString& chosen) {
    auto* editor = input::makeListEditor(m_fields, choices);
    editor->setObjectName(name);
    editor->setLabel(label, tr("Logger's file"));
    editor->setText(chosen);
    connect(editor, &input::Editor::committed, this, &TraceTaker::readAgain);
    return editor;
}

void TraceTaker::build() {
    delete m_fields;  // of another file, if it was left standing
    m_fields = new QWidget(this);
    m_lines->addWidget(m_fields);
    auto* lines = new QVBoxLayout(m_fields);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(look::kGap / 2);
    lines->addWidget(shell::softText(tr("“%1”: which column is what").arg(m_name), m_fields));
    auto* grid = new shell::Fields(6, m_fields);
    lines->addWidget(grid);
    addChoices(grid);
    m_said = new shell::Text({}, look::TypeRole::Body, look::Role::Ink, m_fields);
    m_said->setWordWrap(true);
    lines->addWidget(m_said);
    auto* buttons = new QHBoxLayout;
    m_take = new shell::KeyButton(tr("Take it in"), shell::ButtonKind::Primary, m_fields);
    m_take->setObjectName(QStringLiteral("takeTraceButton"));
    auto* leave = new shell::KeyButton(tr("Leave it"), shell::ButtonKind::Quiet, m_fields);
    leave->setObjectName(QStringLiteral("leaveTraceButton"));
    buttons->addWidget(m_take);
    buttons->addWidget(leave);
    buttons->addStretch(1);
    lines->addLayout(buttons);
    connect(m_take, &QPushButton::clicked, this, &TraceTaker::take);
    connect(leave, &QPushButton::clicked, this, &TraceTaker::close);
}

void TraceTaker::addChoices(shell::Fields* grid) {
    std::vector<input::ChoiceItem> units{{kNone, tr("not said")}};
    for (const UnitCode unit : quantity::unitsOf(UnitFamily::Pressure)) {
        const QString text = words::qstring(std::string(quantity::unitText(unit)));
        units.push_back({text, text});
    }
    const auto second = words::qstring(std::string(quantity::unitText(UnitCode::Second)));
    const auto minute = words::qstring(std::string(quantity::unitText(UnitCode::Minute)));
    const auto columns = columnChoices(false);
    const auto columnsOrNone = columnChoices(true);
    grid->add(addChoice(QStringLiteral("traceTime"), tr("Times"), columns, codeOfColumn(m_guess.time)), 2);
    grid->add(addChoice(QStringLiteral("traceTimeUnit"), tr("Times in"),
                        {{second, tr("seconds")}, {minute, tr("minutes")}},
                        codeOfUnit(m_guess.time) == minute ? minute : second),
              1);
    grid->add(addChoice(QStringLiteral("tracePressure"), tr("Gauge pressure"), columns,
                        codeOfColumn(m_guess.pressure)),
              2);
    grid->add(addChoice(QStringLiteral("traceUnit"), tr("Unit"), units, codeOfUnit(m_guess.pressure)), 1);
    grid->add(addChoice(QStringLiteral("traceBarometer"), tr("Barometer"), columnsOrNone,
                        codeOfColumn(m_guess.barometer)),
              3);
    grid->add(addChoice(QStringLiteral("traceTemperature"), tr("Temperature of the pipe"), columnsOrNone,
                        codeOfColumn(m_guess.temperature)),
              3);
}

input::Editor* TraceTaker::editor(const QString& name) const {
    return m_fields == nullptr ? nullptr : m_fields->findChild<input::Editor*>(name);
}

exchange::TraceColumns TraceTaker::columnsSaid() const {
    exchange::TraceColumns columns;
    columns.headed = m_guess.headed;
    const auto chosen = [this](const char* name, std::optional<UnitCode> unit) -> std::optional<TraceColumn> {
        bool isOne = false;
        const auto at = editor(QString::fromLatin1(name))->text().toUInt(&isOne);
        return isOne && at < m_firstRow.size() ? std::optional(TraceColumn{at, m_firstRow[at], unit})
                                               : std::nullopt;
    };
    const auto unitIn = [this](const char* name) {
        const auto text = editor(QString::fromLatin1(name))->text().toStdString();
        return text.empty() || text == "none" ? std::nullopt : quantity::unitFromText(text);
    };
    // A clock has no unit, and says so by its colons.
    const bool isFigures = m_guess.time && m_guess.time->unit;
    const auto timeUnit = unitIn("traceTimeUnit");
    columns.time = chosen("traceTime", isFigures || timeUnit == UnitCode::Minute ? timeUnit : std::nullopt);
    columns.pressure = chosen("tracePressure", unitIn("traceUnit"));
    const auto barometerUnit = m_guess.barometer ? m_guess.barometer->unit : std::nullopt;
    columns.barometer = chosen("traceBarometer", barometerUnit.value_or(UnitCode::Millibar));
    const auto temperatureUnit = m_guess.temperature ? m_guess.temperature->unit : std::nullopt;
    columns.temperature = chosen("traceTemperature", temperatureUnit.value_or(UnitCode::Celsius));
    return columns;
}

void TraceTaker::readAgain() {
    exchange::TraceForm form;
    form.columns = columnsSaid();
    m_file = exchange::readTrace(m_bytes, form);
    m_said->setInk(m_file ? look::Role::Ink : look::Role::Fail);
    m_said->setText(m_file ? readText(*m_file) : refusalText(m_file.error()));
    m_take->setEnabled(m_file.has_value());
}

QString TraceTaker::refusalText(const exchange::TraceRefusal& refusal) const {
    switch (refusal.fault) {
        case TraceFault::NoTimes:
            return tr(
                "No times can be read in that column: choose the one with seconds, minutes, clock times or "
                "dates with clock times.");
        case TraceFault::NoPressures:
            return tr("No pressures can be read in that column: choose the gauge's.");
        case TraceFault::NoUnit:
            return tr("Nothing says what the pressures are in (line %1): choose the unit. It is never "
                      "guessed.")
                .arg(refusal.line);
        case TraceFault::ClockGoesBack:
            return tr("The clock goes back in line %1, so what lies between can't be told. Nothing is taken "
                      "in; cut "
                      "the file there.")
                .arg(refusal.line);
        case TraceFault::TooLong:
            return tr("There are more lines than a day at ten a second. Cut out the test.");
        case TraceFault::TooFew:
            break;
    }
    return tr("There are fewer than two readings in it.");
}

QString TraceTaker::readText(const exchange::TraceFile& file) const {
    const auto& words = m_context.window.words;
    const auto millibar = [&](const tightness::TracePoint& point) {
        return words.figure(
            {quantity::Decimal::rounded(point.pressure.in(quantity::kMillibar), 2), UnitCode::Millibar});
    };
    const auto lasts = (file.trace.back().at - file.trace.front().at).in(quantity::kSecond);
    QString text = tr("%1 readings over %2, from %3 to %4.")
                       .arg(file.trace.size())
                       .arg(words.figure({quantity::Decimal::rounded(lasts, 1), UnitCode::Second}),
                            millibar(file.trace.front()), millibar(file.trace.back()));
    if (!file.timesSaid) {
        text += QLatin1Char(' ') + tr("Nothing says what the times are in: they are taken as seconds.");
    }
    if (file.leftOut > 0) {
        text += QLatin1Char(' ') + tr("Lines that can't be read are left out: %1, the first in line %2.")
                                       .arg(file.leftOut)
                                       .arg(file.firstLeftOut);
    }
    return text;
}

/// A clock without dates is taken to be of the visit's day.
std::optional<Instant> TraceTaker::beganAt() const {
    if (!m_file->beganAt) {
        return std::nullopt;
    }
    constexpr int kHour = 3600;
    constexpr int kMinute = 60;
    const int second = *m_file->beganAt;
    const QString time = QStringLiteral("%1:%2:%3")
                             .arg(second / kHour, 2, 10, QLatin1Char('0'))
                             .arg(second % kHour / kMinute, 2, 10, QLatin1Char('0'))
                             .arg(second % kMinute, 2, 10, QLatin1Char('0'));
    Instant at{};
    const auto day = m_file->beganOn.value_or(m_context.model.file().visit.date);
    return instantAt(day, time.toStdString(), at) ? std::optional(at) : std::nullopt;
}

void TraceTaker::take() {
    if (!m_file) {
        return;
    }
    reg::TraceSource source;
    source.name = m_name.toStdString();
    source.origin = reg::TraceOrigin::File;
    source.beganAt = beganAt();
    source.resolution.unit = m_file->unit;
    const auto trace = m_file->trace;
    close();
    Q_EMIT taken(trace, source);
}

void TraceTaker::close() {
    hide();
    m_fields->hide();
    m_fields->deleteLater();  // the button that was pressed is one of its own
    m_fields = nullptr;
    m_said = nullptr;
    m_take = nullptr;
    Q_EMIT stopsChanged();
}

}  // namespace hearth::ui::visit
