// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/room_trace_area.h"

#include "core/air/co_watch.h"
#include "core/quantity/units.h"
#include "core/record/trace_text.h"
#include "ui/gauge/gauge_words.h"
#include "ui/shell/flow_layout.h"
#include "ui/shell/kit.h"
#include "ui/shell/plot_view.h"
#include "ui/visit/part_view.h"
#include "ui/visit/stage_timer.h"
#include "ui/words/plot_words.h"
#include "ui/words/room_trace_words.h"

#include <QVBoxLayout>

#include <algorithm>
#include <array>
#include <chrono>
#include <cmath>

namespace hearth::ui::visit {

using quantity::Decimal;
using quantity::UnitCode;
using words::qstring;

namespace {

/// Minutes between the readings offered.
constexpr std::array kEvery{1, 2, 5, 10, 15, 30, 60};
/// As many as a person confirms at a look; by it the first interval is chosen.
constexpr std::size_t kMostOffered = 30;

int decimalsOf(const reg::GaugeTrace& trace) {
    const auto step = trace.source.resolution.value();
    return step ? step->decimals() : 0;
}

quantity::Duration everyMinutes(int minutes) {
    return {static_cast<double>(minutes), quantity::kMinute};
}

}  // namespace

RoomTraceArea::RoomTraceArea(const SheetContext& context, QWidget* parent)
    : QWidget(parent), m_context(context), m_lines(new QVBoxLayout(this)) {
    setObjectName(QStringLiteral("roomTrace"));
    m_lines->setContentsMargins(0, 0, 0, 0);
    m_lines->setSpacing(look::kGap / 2);
    build();
    hide();
}

void RoomTraceArea::build() {
    const auto line = [this](look::TypeRole type, look::Role ink, const char* name) {
        auto* made = new shell::Text({}, type, ink, this);
        made->setWordWrap(true);
        made->setObjectName(QString::fromLatin1(name));
        m_lines->addWidget(made);
        return made;
    };
    m_source = line(look::TypeRole::Small, look::Role::SoftInk, "roomTraceSource");
    m_plot = new shell::PlotView(this);
    m_plot->setObjectName(QStringLiteral("roomTracePlot"));
    m_lines->addWidget(m_plot);
    m_about = line(look::TypeRole::Body, look::Role::Ink, "roomTraceAbout");
    auto* fields = new shell::Fields(3, this);
    std::vector<input::ChoiceItem> choices{{QStringLiteral("0"), tr("the highest alone")}};
    for (const int minutes : kEvery) {
        choices.push_back({QString::number(minutes),
                           m_context.window.words.figure({Decimal(minutes, 0), UnitCode::Minute})});
    }
    m_every = input::makeListEditor(fields, choices);
    m_every->setLabel(tr("Readings offered every"), tr("Carbon monoxide as it was watched"));
    m_every->setObjectName(QStringLiteral("roomTraceEvery"));
    connect(m_every, &input::Editor::committed, this, [this] {
        makeOffers();
        showOffers();
    });
    fields->add(m_every);
    m_lines->addWidget(fields);
    m_offered = new shell::FlowLayout(nullptr, look::kGap);
    m_lines->addLayout(m_offered);
    m_refused = line(look::TypeRole::Body, look::Role::Fail, "roomTraceRefused");
    m_refused->hide();
    auto* buttons = new shell::FlowLayout(nullptr, look::kGap);
    const auto button = [&](const QString& text, const QKeySequence& key, shell::ButtonKind kind,
                            const char* name, void (RoomTraceArea::*pressed)()) {
        auto* made = new shell::KeyButton(text, key, kind, this);
        made->setObjectName(QString::fromLatin1(name));
        passByEnter(made);
        connect(made, &QPushButton::clicked, this, pressed);
        buttons->addWidget(made);
        return made;
    };
    m_all = button(tr("Put all of them into the series"), QKeySequence(Qt::ALT | Qt::Key_8),
                   shell::ButtonKind::Plain, "roomTraceAll", &RoomTraceArea::confirmAll);
    m_remove = button(tr("Take what was watched away"), {}, shell::ButtonKind::Quiet, "removeRoomTrace",
                      &RoomTraceArea::remove);
    m_lines->addLayout(buttons);
}

/// The newest of rooms.
const reg::GaugeTrace* RoomTraceArea::kept() const {
    const auto& traces = m_context.model.file().traces;
    const auto found =
        std::find_if(traces.rbegin(), traces.rend(), [](const reg::GaugeTrace& one) { return !one.test; });
    return found == traces.rend() ? nullptr : &*found;
}

void RoomTraceArea::takeUp() {
    const auto* trace = kept();
    if (trace == nullptr) {
        m_shown.reset();
        m_readings.clear();
        return;
    }
    if (m_shown == trace->id) {
        return;
    }
    m_shown = trace->id;
    auto readings = m_context.model.store().roomTraceReadings(trace->id);
    say(readings ? Result<void>() : tl::unexpected(readings.error()));
    m_readings = readings ? std::move(*readings) : std::vector<air::CoReading>();
    chooseInterval();
    const auto& model = m_context.model;
    const rulebook::RulesInForce rules(model.book(), rulebook::Edition::General,
                                       model.file().installation.gas, model.file().visit.date);
    const auto& words = m_context.window.words;
    const record::RoomTrace shown{trace->source, m_readings};
    m_plot->show(
        words::roomTracePlots(shown, {}, words::roomLimits(air::coLevelsInForce(rules), words), words));
    m_source->setText(
        words::roomTraceSource(shown, words) +
        (trace->source.isSimulated ? QLatin1Char(' ') + gauge::GaugeWords::simulated() : QString()));
    m_source->setInk(trace->source.isSimulated ? look::Role::Fail : look::Role::SoftInk);
}

/// The shortest that a person can look through.
void RoomTraceArea::chooseInterval() {
    const auto* fits = std::find_if(kEvery.begin(), kEvery.end(), [this](int minutes) {
        return air::offeredOf(m_readings, everyMinutes(minutes)).size() <= kMostOffered;
    });
    m_every->setText(fits == kEvery.end() ? QStringLiteral("0") : QString::number(*fits));
}

void RoomTraceArea::makeOffers() {
    m_offers.clear();
    const auto* trace = kept();
    if (trace == nullptr || !trace->source.beganAt) {
        return;
    }
    const Instant began = *trace->source.beganAt;
    const int decimals = decimalsOf(*trace);
    const auto highest = air::highestOf(m_readings);
    for (const std::size_t i : air::offeredOf(m_readings, everyMinutes(m_every->text().toInt()))) {
        const auto& one = m_readings[i];
        Offer offer;
        offer.reading.ppm = qstring(Decimal::rounded(one.level.in(quantity::kPpm), decimals).text());
        offer.reading.place = one.place;
        offer.reading.at =
            began + std::chrono::milliseconds(std::llround(one.at.in(quantity::kSecond)*1000.0));
        offer.isHighest = highest == i;
        offer.isTimed = minutesOf(m_context.model, offer.reading, began).has_value();
        offer.isEntered = isInSeries(m_context.model, offer.reading, began);
        m_offers.push_back(std::move(offer));
    }
}

QString RoomTraceArea::textOf(const Offer& offer) const {
    const auto& words = m_context.window.words;
    const QString place =
        words.choice(reg::Item::RoomCoPlace, std::string(record::codeOf(offer.reading.place))).remove(u'&');
    const QString reading = tr("%1, %2: %3")
                                .arg(qstring(timeOfDay(offer.reading.at)), place,
                                     offer.reading.ppm + QStringLiteral("\u00A0ppm"));
    const QString named = offer.isHighest ? tr("%1, the highest").arg(reading) : reading;
    return offer.isEntered ? tr("%1, in the series").arg(named) : named;
}

void RoomTraceArea::showOffers() {
    bool hasChanged = false;
    while (m_confirm.size() < m_offers.size()) {
        auto* button = new shell::KeyButton({}, shell::ButtonKind::Plain, this);
        button->setObjectName(QStringLiteral("confirmRoomReading%1").arg(m_confirm.size()));
        passByEnter(button);
        connect(button, &QPushButton::clicked, this, [this, i = m_confirm.size()] { confirm(i); });
        m_offered->addWidget(button);
        m_confirm.push_back(button);
        hasChanged = true;
    }
    bool hasMore = false;
    for (std::size_t i = 0; i < m_confirm.size(); ++i) {
        auto* button = m_confirm[i];
        const bool isOffered = i < m_offers.size();
        hasChanged = hasChanged || button->isHidden() == isOffered;
        button->setVisible(isOffered);
        if (isOffered) {
            const bool canEnter = m_offers[i].isTimed && !m_offers[i].isEntered && !m_isReadOnly;
            button->setWords(textOf(m_offers[i]));
            button->setAccessibleName(tr("Put into the series: %1").arg(textOf(m_offers[i])));
            button->setEnabled(canEnter);
            hasMore = hasMore || canEnter;
        }
    }
    m_all->setEnabled(hasMore);
    if (hasChanged) {
        Q_EMIT stopsChanged();
    }
}

void RoomTraceArea::showText() {
    const auto* trace = kept();
    if (trace == nullptr) {
        return;
    }
    m_about->setText(aboutOffers(*trace));
}

QString RoomTraceArea::aboutOffers(const reg::GaugeTrace& trace) const {
    if (!trace.source.beganAt) {
        return tr("It has no clock times, so its readings can't be put into the series.");
    }
    if (m_readings.empty()) {
        return {};
    }
    QStringList told{tr("Readings offered for the series. Space puts the one there that you stand on."),
                     words::roomTraceBesideFindings(m_context.window.words)};
    if (std::any_of(m_offers.begin(), m_offers.end(), [](const Offer& offer) { return !offer.isTimed; })) {
        told << (seriesBegan(m_context.model)
                     ? tr("What was taken before the series began can't be put there.")
                     : tr("When the series began is not known, since its minutes were typed: these can't be "
                          "put "
                          "beside them."));
    }
    return told.join(QLatin1Char(' '));
}

void RoomTraceArea::refresh() {
    takeUp();
    const bool isShown = m_shown.has_value();
    const bool hasChanged = isHidden() == isShown;
    setVisible(isShown);
    makeOffers();
    showText();
    showOffers();
    if (hasChanged) {
        Q_EMIT stopsChanged();
    }
}

void RoomTraceArea::confirm(std::size_t offer) {
    const auto* trace = kept();
    if (trace == nullptr || offer >= m_offers.size() || m_offers[offer].isEntered ||
        !m_offers[offer].isTimed) {
        return;
    }
    const RoomReading reading = m_offers[offer].reading;  // entering it makes the offers anew
    const auto put = putReading(m_context.model, reading, *trace->source.beganAt);
    say(put);
    if (!put) {
        return;
    }
    Q_EMIT said(tr("%1 ppm put into the series.").arg(reading.ppm));
    const auto next = std::find_if(m_confirm.begin(), m_confirm.end(), [](const shell::KeyButton* button) {
        return button->isVisible() && button->isEnabled();
    });
    if (next != m_confirm.end()) {
        (*next)->setFocus(Qt::OtherFocusReason);
    }
}

void RoomTraceArea::confirmAll() {
    const auto* trace = kept();
    const auto began = trace != nullptr ? trace->source.beganAt : std::nullopt;
    const auto offers = m_offers;
    int count = 0;
    for (const auto& offer : offers) {
        if (!began || offer.isEntered || !offer.isTimed) {
            continue;
        }
        const auto put = putReading(m_context.model, offer.reading, *began);
        say(put);
        if (!put) {
            return;
        }
        ++count;
    }
    Q_EMIT said(tr("%n reading(s) put into the series.", nullptr, count));
}

/// What was taken from practice must not stay behind when nothing tells any more that it is practice.
void RoomTraceArea::remove() {
    const auto* trace = kept();
    if (trace == nullptr) {
        return;
    }
    const bool isPractice = trace->source.isSimulated;
    const auto began = trace->source.beganAt.value_or(trace->keptAt);
    // When something was entered is known to the store alone.
    const auto file = m_context.model.store().visitFile(m_context.model.file().visit.id);
    const bool hasReadings =
        !file || std::any_of(file->entries.begin(), file->entries.end(), [&](const reg::Entry& entry) {
            return entry.item == reg::Item::RoomCo && entry.at >= began;
        });
    if (isPractice && hasReadings) {
        m_refused->setText(
            tr("Readings were put into the series since this practice began. Clear them first: with them no "
               "record may be issued."));
        m_refused->show();
        return;
    }
    const auto removed = m_context.model.removeTrace(trace->id);
    say(removed);
    if (removed) {
        Q_EMIT said(tr("What was watched was taken away. Ctrl+Z brings it back."));
    }
}

void RoomTraceArea::say(const Result<void>& done) {
    m_refused->setText(done ? QString() : m_context.window.words.error(done.error()));
    m_refused->setVisible(!done);
}

void RoomTraceArea::setReadOnly(bool readOnly) {
    m_isReadOnly = readOnly;
    m_remove->setEnabled(!readOnly);
    showOffers();
}

}  // namespace hearth::ui::visit
