// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/room_watch.h"

#include "core/air/co_watch.h"
#include "core/air/room_co.h"
#include "ui/gauge/profiles_panel.h"
#include "ui/shell/kit.h"
#include "ui/visit/gauge_profiles.h"
#include "ui/visit/live_gauge.h"
#include "ui/visit/part_view.h"
#include "ui/visit/room_series.h"
#include "ui/visit/room_trace_taker.h"
#include "ui/visit/what_first.h"
#include "ui/words/plot_words.h"

#include <QApplication>
#include <QVBoxLayout>

#include <algorithm>
#include <chrono>

namespace hearth::ui::visit {

using words::qstring;
using words::Words;

RoomWatch::RoomWatch(const SheetContext& context, QWidget* parent)
    : QWidget(parent),
      m_context(context),
      m_lines(new QVBoxLayout(this)),
      m_whatFirst(new WhatFirst(this)),
      m_open(new shell::KeyButton(tr("Watch carbon monoxide live"), shell::ButtonKind::Quiet, this)),
      m_setUp(new shell::KeyButton(tr("Set up an instrument"), shell::ButtonKind::Quiet, this)),
      m_takeFile(new shell::KeyButton(tr("Take in a logger's file"), shell::ButtonKind::Quiet, this)),
      m_taker(new RoomTraceTaker(context, this)) {
    m_lines->setContentsMargins(0, 0, 0, 0);
    m_lines->setSpacing(look::kGap);
    m_whatFirst->setObjectName(QStringLiteral("roomWatchWhatFirst"));
    m_lines->addWidget(m_whatFirst);
    m_open->setObjectName(QStringLiteral("watchRoomButton"));
    m_setUp->setObjectName(QStringLiteral("setUpRoomButton"));
    m_takeFile->setObjectName(QStringLiteral("takeRoomFile"));
    for (auto* button : {m_open, m_setUp, m_takeFile}) {
        passByEnter(button);
        // As they are spoken they are told from those of a test's gauge.
        button->setAccessibleName(tr("%1, carbon monoxide").arg(button->text()));
        m_lines->addWidget(button, 0, Qt::AlignLeft);
    }
    connect(m_open, &QPushButton::clicked, this, &RoomWatch::open);
    connect(m_setUp, &QPushButton::clicked, this, &RoomWatch::setUp);
    m_lines->addWidget(m_taker);
    connect(m_takeFile, &QPushButton::clicked, m_taker, &RoomTraceTaker::chooseFile);
    connect(m_taker, &RoomTraceTaker::stopsChanged, this, &RoomWatch::stopsChanged);
    connect(m_taker, &RoomTraceTaker::taken, this,
            [this](const std::vector<air::CoReading>& readings, const reg::TraceSource& source) {
                if (const auto kept = keepTrace(source, readings); !kept) {
                    tellNotKept(kept.error());
                }
            });
}

gauge::AirLevels RoomWatch::levels() const {
    const auto& model = m_context.model;
    const rulebook::RulesInForce rules(model.book(), rulebook::Edition::General,
                                       model.file().installation.gas, model.file().visit.date);
    return {air::dangerFrom(rules), words::roomLimits(air::coLevelsInForce(rules), m_context.window.words)};
}

void RoomWatch::makePanel() {
    const auto& store = m_context.window.store;
    m_panel = new gauge::AirPanel(profilesThatRead(quantity::UnitFamily::Trace, store), levels(),
                                  journalsOf(store), m_context.window.clock, m_context.window.words, this);
    for (auto* button : m_panel->findChildren<QPushButton*>()) {
        passByEnter(button);
    }
    m_lines->insertWidget(1, m_panel);
    connect(m_panel, &gauge::AirPanel::taken, this, &RoomWatch::take);
    connect(m_panel, &gauge::AirPanel::watched, this, &RoomWatch::keep);
    connect(m_panel, &gauge::AirPanel::dangerChanged, this, &RoomWatch::showDanger);
    // While something is watched nothing is changed beneath it.
    connect(m_panel, &gauge::AirPanel::recordingChanged, this, [this](bool isRecording) {
        if (isRecording) {
            m_keptSoFar.reset();
        }
        m_setUp->setEnabled(!isRecording);
        if (m_profiles != nullptr) {
            m_profiles->setEnabled(!isRecording);
        }
    });
}

void RoomWatch::open() {
    if (m_panel == nullptr) {
        makePanel();
    }
    m_open->hide();
    Q_EMIT stopsChanged();
    m_panel->takeFocus();
}

void RoomWatch::setUp() {
    if (m_profiles == nullptr) {
        m_profiles = new gauge::ProfilesPanel(
            profilesThatRead(quantity::UnitFamily::Trace, m_context.window.store),
            quantity::UnitFamily::Trace, m_context.window.clock, m_context.window.words, this);
        for (auto* button : m_profiles->findChildren<QPushButton*>()) {
            passByEnter(button);
        }
        m_lines->addWidget(m_profiles);
        connect(m_profiles, &gauge::ProfilesPanel::profilesChanged, this, &RoomWatch::changeProfiles);
    }
    m_setUp->hide();
    Q_EMIT stopsChanged();
    m_profiles->takeFocus();
}

void RoomWatch::changeProfiles(const std::vector<gauge::GaugeProfile>& profiles) {
    const auto kept = keepProfiles(profiles, quantity::UnitFamily::Trace, m_context.window.store);
    if (!kept) {
        m_context.window.dialogs.tell(this, tr("The instrument was not kept"),
                                      m_context.window.words.error(kept.error()));
        return;
    }
    if (m_panel != nullptr) {
        const auto danger = m_panel->danger();
        m_panel->deleteLater();
        makePanel();
        m_panel->setDanger(danger);
        Q_EMIT stopsChanged();
    }
}

void RoomWatch::showDanger(bool isDanger) {
    if (!isDanger) {
        m_whatFirst->setSteps({}, {});
        return;
    }
    const auto& file = m_context.model.file();
    const auto& words = m_context.window.words;
    const auto event = Words::Emergency::CarbonMonoxide;
    if (m_whatFirst->setSteps(words.emergencyTitle(event),
                              words.emergencySteps(event, file.installation.gas, file.premises.country,
                                                   file.emergencyContacts))) {
        Q_EMIT urgent(m_whatFirst);
    }
}

void RoomWatch::refuse(const Error& error) {
    m_context.window.dialogs.tell(this, tr("The reading was not kept"), m_context.window.words.error(error));
}

void RoomWatch::tellNotKept(const Error& error) {
    m_context.window.dialogs.tell(this, tr("What was watched was not kept"),
                                  m_context.window.words.error(error));
}

Result<reg::GaugeTraceId> RoomWatch::keepTrace(const reg::TraceSource& source,
                                               std::vector<air::CoReading> readings) {
    const auto& file = m_context.model.file();
    store::NewRoomTrace trace{file.visit.id, source, std::move(readings)};
    // A recording that a failed machine left may be taken while another watch goes on.
    const auto before = std::find_if(file.traces.begin(), file.traces.end(), [&](const reg::GaugeTrace& one) {
        return one.id == m_keptSoFar && one.source.beganAt == source.beganAt;
    });
    if (before != file.traces.end()) {
        trace.replaces = before->id;
    }
    auto kept = m_context.model.keepRoomTrace(trace);
    if (!kept && kept.error().code == ErrorCode::TraceInRecord) {
        trace.replaces.reset();  // what a record shows stays, and this one stands beside it
        kept = m_context.model.keepRoomTrace(trace);
    }
    return kept;
}

/// Of practice the trace comes first: a reading from no room must not stand in the series without it.
void RoomWatch::take(const gauge::AirTaken& reading) {
    const auto began = reading.origin.beganAt.value_or(reading.at);
    if (reading.origin.isSimulated() && !m_keptSoFar) {
        const double since = std::chrono::duration<double>(reading.at - began).count();
        const auto kept =
            keepTrace(traceSourceOf(reading.origin),
                      {{quantity::Duration(since, quantity::kSecond),
                        quantity::Share(reading.ppm.toDouble(), quantity::kPpm), reading.place}});
        if (!kept) {
            refuse(kept.error());
            return;
        }
        m_keptSoFar = *kept;
    }
    const RoomReading row{qstring(reading.ppm.text()), reading.place, reading.at};
    const bool hasTime = minutesOf(m_context.model, row, began).has_value();
    if (const auto put = putReading(m_context.model, row, began); !put) {
        refuse(put.error());
        return;
    }
    Q_EMIT said(hasTime ? tr("%1 put into the series.")
                              .arg(m_context.window.words.figure({reading.ppm, quantity::UnitCode::Ppm}))
                        : tr("%1 put into the series without its minutes: when the series began is not "
                             "known. Type them.")
                              .arg(m_context.window.words.figure({reading.ppm, quantity::UnitCode::Ppm})));
}

void RoomWatch::keep(const gauge::TakenTrace& taken) {
    auto source = traceSourceOf(taken.origin);
    if (source.resolution.text.empty()) {
        source.resolution = {quantity::Decimal(1, taken.decimals).text(), quantity::UnitCode::Ppm};
    }
    const auto kept = keepTrace(source, taken.air);
    if (!kept) {
        tellNotKept(kept.error());
        return;
    }
    m_panel->kept();
}

bool RoomWatch::toggle() {
    const auto* focus = QApplication::focusWidget();
    if (m_panel == nullptr || focus == nullptr || !m_panel->isAncestorOf(focus)) {
        return false;
    }
    m_panel->toggle();
    return true;
}

void RoomWatch::refresh() {
    if (m_panel != nullptr) {
        m_panel->setLevels(levels());
        showDanger(m_panel->isDanger());
    }
}

void RoomWatch::setReadOnly(bool readOnly) {
    m_open->setEnabled(!readOnly);
    m_setUp->setEnabled(!readOnly);
    m_takeFile->setEnabled(!readOnly);
    if (m_panel != nullptr) {
        m_panel->setEnabled(!readOnly);
    }
}

}  // namespace hearth::ui::visit
