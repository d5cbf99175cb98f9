// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/room_trace_taker.h"

#include "core/air/co_watch.h"
#include "core/air/figures.h"
#include "core/exchange/csv.h"
#include "core/record/trace_text.h"
#include "ui/gauge/gauge_words.h"
#include "ui/shell/flow_layout.h"
#include "ui/shell/kit.h"
#include "ui/visit/chosen_table.h"
#include "ui/visit/part_view.h"

#include <QVBoxLayout>

#include <array>

namespace hearth::ui::visit {

using air::CoPlace;
using exchange::CoFault;
using exchange::TraceColumn;
using quantity::UnitCode;

namespace {

const QString kNotSaid = QStringLiteral("none");
const QString kIsPpm = QStringLiteral("ppm");
const QString kInMinutes = QStringLiteral("min");

QString codeOfCoColumn(const std::optional<TraceColumn>& column) {
    return column ? QString::number(column->at) : QString();
}

std::vector<input::ChoiceItem> coColumns(const std::vector<std::string>& firstRow) {
    constexpr int kShown = 30;
    std::vector<input::ChoiceItem> choices;
    for (std::size_t i = 0; i < firstRow.size(); ++i) {
        choices.push_back({QString::number(i), QStringLiteral("%1: %2").arg(i + 1).arg(
                                                   words::qstring(firstRow[i]).left(kShown))});
    }
    return choices;
}

std::vector<input::ChoiceItem> probePlaces(const words::Words& words) {
    std::vector<input::ChoiceItem> choices;
    for (const auto place : {CoPlace::Outside, CoPlace::Room, CoPlace::AtAppliance, CoPlace::NextRoom}) {
        const auto code = record::codeOf(place);
        choices.push_back(
            {shell::coded(code), words.choice(reg::Item::RoomCoPlace, std::string(code)).remove(u'&')});
    }
    return choices;
}

}  // namespace

RoomTraceTaker::RoomTraceTaker(const SheetContext& context, QWidget* parent)
    : QWidget(parent), m_context(context), m_lines(new QVBoxLayout(this)) {
    m_lines->setContentsMargins(0, 0, 0, 0);
    m_lines->setSpacing(look::kGap / 2);
    hide();
}

void RoomTraceTaker::chooseFile() {
    if (const auto table = chooseTable(m_context.window, this)) {
        show(table->name, table->bytes);
    }
}

void RoomTraceTaker::show(const QString& name, const std::string& bytes) {
    m_name = name;
    m_bytes = bytes;
    const auto table = exchange::readCsv(bytes);
    m_firstRow = table.rows.empty() ? std::vector<std::string>() : table.rows.front().cells;
    m_guess = exchange::guessCoColumns(m_firstRow);
    build();
    readAgain();
    QWidget::show();
    Q_EMIT stopsChanged();
    m_take->setFocus(Qt::OtherFocusReason);
}

input::Editor* RoomTraceTaker::addChoice(const char* name, const QString& label,
                                         const std::vector<input::ChoiceItem>& choices,
                                         const QString& chosen) {
    auto* made = input::makeListEditor(m_fields, choices);
    made->setObjectName(QString::fromLatin1(name));
    made->setLabel(label, tr("Logger's file, carbon monoxide"));
    made->setText(chosen);
    connect(made, &input::Editor::committed, this, &RoomTraceTaker::readAgain);
    return made;
}

void RoomTraceTaker::addChoices(shell::Fields* grid) {
    const auto columns = coColumns(m_firstRow);
    const bool isMinutes = m_guess.time && m_guess.time->unit == UnitCode::Minute;
    const bool isPpm = m_guess.level && m_guess.level->unit == UnitCode::Ppm;
    grid->add(addChoice("roomTime", tr("Times"), columns, codeOfCoColumn(m_guess.time)), 2);
    grid->add(addChoice("roomTimeUnit", tr("Times in"),
                        {{QStringLiteral("s"), tr("seconds")}, {kInMinutes, tr("minutes")}},
                        isMinutes ? kInMinutes : QStringLiteral("s")),
              1);
    grid->add(addChoice("roomLevel", tr("Carbon monoxide"), columns, codeOfCoColumn(m_guess.level)), 2);
    grid->add(addChoice("roomUnit", tr("Unit"), {{kNotSaid, tr("not said")}, {kIsPpm, QStringLiteral("ppm")}},
                        isPpm ? kIsPpm : kNotSaid),
              1);
    grid->add(addChoice("roomPlace", tr("Where its probe was"), probePlaces(m_context.window.words), {}), 3);
    m_began = input::makeTimeEditor(m_fields);
    m_began->setObjectName(QStringLiteral("roomBegan"));
    m_began->setLabel(tr("Clock time of its first reading"), tr("Logger's file, carbon monoxide"));
    connect(m_began, &input::Editor::committed, this, &RoomTraceTaker::readAgain);
    grid->add(m_began, 3);
}

void RoomTraceTaker::build() {
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
    m_said->setObjectName(QStringLiteral("roomFileSaid"));
    lines->addWidget(m_said);
    auto* buttons = new shell::FlowLayout(nullptr, look::kGap);
    const auto button = [&](const QString& text, shell::ButtonKind kind, const char* name,
                            void (RoomTraceTaker::*pressed)()) {
        auto* made = new shell::KeyButton(text, kind, m_fields);
        made->setObjectName(QString::fromLatin1(name));
        made->setAccessibleName(tr("%1, carbon monoxide").arg(text));
        connect(made, &QPushButton::clicked, this, pressed);
        buttons->addWidget(made);
        return made;
    };
    m_take =
        button(tr("Take it in"), shell::ButtonKind::Primary, "takeRoomTraceButton", &RoomTraceTaker::take);
    button(tr("Leave it"), shell::ButtonKind::Quiet, "leaveRoomTraceButton", &RoomTraceTaker::close);
    lines->addLayout(buttons);
}

input::Editor* RoomTraceTaker::editor(const QString& name) const {
    return m_fields == nullptr ? nullptr : m_fields->findChild<input::Editor*>(name);
}

exchange::CoColumns RoomTraceTaker::columnsSaid() const {
    exchange::CoColumns columns;
    columns.headed = m_guess.headed;
    const auto chosen = [this](const char* name, std::optional<UnitCode> unit) -> std::optional<TraceColumn> {
        bool isOne = false;
        const auto at = editor(QString::fromLatin1(name))->text().toUInt(&isOne);
        return isOne && at < m_firstRow.size() ? std::optional(TraceColumn{at, m_firstRow[at], unit})
                                               : std::nullopt;
    };
    // A clock has no unit, and says so by its colons.
    const bool isMinutes = editor(QStringLiteral("roomTimeUnit"))->text() == kInMinutes;
    const auto guessed = m_guess.time ? m_guess.time->unit : std::nullopt;
    columns.time = chosen("roomTime", isMinutes ? std::optional(UnitCode::Minute)
                                      : guessed ? std::optional(UnitCode::Second)
                                                : std::nullopt);
    const bool isPpm = editor(QStringLiteral("roomUnit"))->text() == kIsPpm;
    columns.level = chosen("roomLevel", isPpm ? std::optional(UnitCode::Ppm) : std::nullopt);
    // What its heading says of another unit is not put aside by a choice beside it.
    columns.isOtherwise = columns.level && exchange::saysOtherwise(columns.level->heading);
    return columns;
}

void RoomTraceTaker::readAgain() {
    m_file = exchange::readCoFile(m_bytes, columnsSaid());
    m_began->setVisible(!m_file || !m_file->beganAt);
    const bool hasPlace = !editor(QStringLiteral("roomPlace"))->text().isEmpty();
    QString said = m_file ? readText(*m_file) : refusalText(m_file.error());
    if (m_file && !hasPlace) {
        said += QLatin1Char(' ') + tr("Say where its probe was.");
    }
    if (m_file && !beganAt()) {
        said += QLatin1Char(' ') + tr("The file tells no clock time: say when its first reading was taken.");
    }
    m_said->setInk(m_file ? look::Role::Ink : look::Role::Fail);
    m_said->setText(said);
    m_take->setEnabled(m_file && hasPlace && beganAt());
}

QString RoomTraceTaker::refusalText(const exchange::CoRefusal& refusal) const {
    switch (refusal.fault) {
        case CoFault::NoTimes:
            return tr(
                "No times can be read in that column: choose the one with seconds, minutes, clock times or "
                "dates with clock times.");
        case CoFault::NoLevels:
            return tr("No column of carbon monoxide is known: choose it.");
        case CoFault::NoUnit:
            return tr("Nothing says that the levels are in ppm (line %1): choose the unit, if they are. It "
                      "is "
                      "never guessed.")
                .arg(refusal.line);
        case CoFault::OtherUnit:
            return refusal.line > 0 ? tr("Line %1 is in another unit.").arg(refusal.line) + QLatin1Char(' ') +
                                          gauge::GaugeWords::onlyPpm()
                                    : tr("The levels are in another unit.") + QLatin1Char(' ') +
                                          gauge::GaugeWords::onlyPpm();
        case CoFault::ClockGoesBack:
            return tr("The clock goes back in line %1, so what lies between can't be told. Nothing is taken "
                      "in; cut the file there.")
                .arg(refusal.line);
        case CoFault::TooLong:
            return tr("There are more lines than a day at ten a second.");
        case CoFault::TooFew:
            break;
    }
    return tr("There are fewer than two readings in it.");
}

QString RoomTraceTaker::readText(const exchange::CoFile& file) const {
    const auto& words = m_context.window.words;
    const auto lasts = (file.readings.back().at - file.readings.front().at).in(quantity::kMinute);
    const auto highest = file.readings[*air::highestOf(file.readings)].level;
    QString text = tr("%1 readings over %2, the highest %3.")
                       .arg(file.readings.size())
                       .arg(words.figure({quantity::Decimal::rounded(lasts, 1), UnitCode::Minute}),
                            words.figure(air::ppmFigure(highest)));
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

/// By the file's clock, or by what is said; a clock without dates is taken to be of the visit's day.
std::optional<Instant> RoomTraceTaker::beganAt() const {
    if (!m_file) {
        return std::nullopt;
    }
    std::string time = m_began->text().trimmed().toStdString();
    if (m_file->beganAt) {
        constexpr int kHour = 3600;
        constexpr int kMinute = 60;
        const int second = *m_file->beganAt;
        time = QStringLiteral("%1:%2:%3")
                   .arg(second / kHour, 2, 10, QLatin1Char('0'))
                   .arg(second % kHour / kMinute, 2, 10, QLatin1Char('0'))
                   .arg(second % kMinute, 2, 10, QLatin1Char('0'))
                   .toStdString();
    }
    Instant at{};
    const auto day = m_file->beganOn.value_or(m_context.model.file().visit.date);
    return instantAt(day, time, at) ? std::optional(at) : std::nullopt;
}

void RoomTraceTaker::take() {
    const auto place = record::coPlaceFromCode(editor(QStringLiteral("roomPlace"))->text().toStdString());
    const auto began = beganAt();
    if (!m_file || !place || !began) {
        return;
    }
    reg::TraceSource source;
    source.name = m_name.toStdString();
    source.origin = reg::TraceOrigin::File;
    source.beganAt = began;
    source.resolution = {quantity::Decimal(1, m_file->decimals).text(), UnitCode::Ppm};
    auto readings = m_file->readings;
    for (auto& reading : readings) {
        reading.place = *place;
    }
    close();
    Q_EMIT taken(readings, source);
}

void RoomTraceTaker::close() {
    hide();
    m_fields->hide();
    m_fields->deleteLater();  // the button that was pressed is one of its own
    m_fields = nullptr;
    m_began = nullptr;
    m_said = nullptr;
    m_take = nullptr;
    Q_EMIT stopsChanged();
}

}  // namespace hearth::ui::visit
