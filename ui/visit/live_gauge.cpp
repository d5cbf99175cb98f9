// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/live_gauge.h"

#include "ui/gauge/live_panel.h"
#include "ui/gauge/profiles_panel.h"
#include "ui/shell/kit.h"
#include "ui/visit/gauge_profiles.h"
#include "ui/visit/part_view.h"

#include <QApplication>

namespace hearth::ui::visit {

namespace {

reg::TraceOrigin originOfKind(gauge::SourceKind kind) {
    switch (kind) {
        case gauge::SourceKind::Serial:
            return reg::TraceOrigin::Serial;
        case gauge::SourceKind::Network:
            return reg::TraceOrigin::Network;
        case gauge::SourceKind::Simulator:
            break;
    }
    return reg::TraceOrigin::Simulator;
}

}  // namespace

reg::TraceSource traceSourceOf(const gauge::TraceOrigin& origin) {
    reg::TraceSource source;
    source.name = origin.name;
    source.origin = originOfKind(origin.kind);
    source.isSimulated = origin.isSimulated();
    source.beganAt = origin.beganAt;
    source.zero = origin.zero;
    source.resolution.unit = origin.unit;
    if (!origin.resolution.text.empty()) {
        source.resolution = origin.resolution;
    }
    return source;
}

reg::TraceMarks traceMarksOf(const std::vector<gauge::GaugeMark>& marks) {
    reg::TraceMarks all;
    for (const auto& mark : marks) {
        // Both sets of codes are the same text; the compiler can't hold that, a test does.
        if (const auto event = reg::traceEventFromCode(gauge::codeOf(mark.event));
            event && all.size() < reg::kMostTraceMarks) {
            all = reg::withMark(std::move(all), {*event, static_cast<int>(mark.at.count())});
        }
    }
    return all;
}

LiveGauge::LiveGauge(const SheetContext& context, const QString& of, QWidget* parent)
    : QWidget(parent),
      m_context(context),
      m_lines(new QVBoxLayout(this)),
      m_open(new shell::KeyButton(tr("Watch a gauge live"), shell::ButtonKind::Quiet, this)),
      m_setUp(new shell::KeyButton(tr("Set up a gauge that sends its readings"), shell::ButtonKind::Quiet,
                                   this)) {
    m_lines->setContentsMargins(0, 0, 0, 0);
    m_lines->setSpacing(look::kGap);
    m_open->setObjectName(QStringLiteral("watchGaugeButton"));
    m_open->setAccessibleName((of.isEmpty() ? QString() : of + QStringLiteral(", ")) + m_open->text());
    passByEnter(m_open);
    m_lines->addWidget(m_open, 0, Qt::AlignLeft);
    connect(m_open, &QPushButton::clicked, this, &LiveGauge::open);
    m_setUp->setObjectName(QStringLiteral("setUpGaugeButton"));
    m_setUp->setAccessibleName((of.isEmpty() ? QString() : of + QStringLiteral(", ")) + m_setUp->text());
    passByEnter(m_setUp);
    m_lines->addWidget(m_setUp, 0, Qt::AlignLeft);
    connect(m_setUp, &QPushButton::clicked, this, &LiveGauge::setUp);
}

void LiveGauge::makePanel() {
    const auto& store = m_context.window.store;
    m_panel = new gauge::LivePanel(profilesThatRead(quantity::UnitFamily::Pressure, store), journalsOf(store),
                                   m_context.window.clock, m_context.window.words, this);
    for (auto* button : m_panel->findChildren<QPushButton*>()) {
        passByEnter(button);
    }
    m_lines->insertWidget(0, m_panel);
    connect(m_panel, &gauge::LivePanel::traceTaken, this, &LiveGauge::taken);
    // While something is recorded nothing is changed beneath it.
    connect(m_panel, &gauge::LivePanel::recordingChanged, this, [this](bool isRecording) {
        m_setUp->setEnabled(!isRecording);
        if (m_profiles != nullptr) {
            m_profiles->setEnabled(!isRecording);
        }
    });
}

void LiveGauge::open() {
    if (m_panel == nullptr) {
        makePanel();
    }
    m_open->hide();
    Q_EMIT stopsChanged();
    m_panel->takeFocus();
}

void LiveGauge::setUp() {
    if (m_profiles == nullptr) {
        m_profiles = new gauge::ProfilesPanel(
            profilesThatRead(quantity::UnitFamily::Pressure, m_context.window.store),
            quantity::UnitFamily::Pressure, m_context.window.clock, m_context.window.words, this);
        for (auto* button : m_profiles->findChildren<QPushButton*>()) {
            passByEnter(button);
        }
        m_lines->addWidget(m_profiles);
        connect(m_profiles, &gauge::ProfilesPanel::profilesChanged, this, &LiveGauge::keepProfiles);
    }
    m_setUp->hide();
    Q_EMIT stopsChanged();
    m_profiles->takeFocus();
}

void LiveGauge::keepProfiles(const std::vector<gauge::GaugeProfile>& profiles) {
    const auto kept = visit::keepProfiles(profiles, quantity::UnitFamily::Pressure, m_context.window.store);
    if (!kept) {
        m_context.window.dialogs.tell(this, tr("The gauge was not kept"),
                                      m_context.window.words.error(kept.error()));
        return;
    }
    if (m_panel != nullptr) {
        m_panel->deleteLater();
        makePanel();
        Q_EMIT stopsChanged();
    }
}

bool LiveGauge::toggle() {
    const auto* focus = QApplication::focusWidget();
    if (m_panel == nullptr || focus == nullptr || !m_panel->isAncestorOf(focus)) {
        return false;
    }
    m_panel->toggle();
    return true;
}

void LiveGauge::kept() {
    if (m_panel != nullptr) {
        m_panel->traceKept();
    }
}

void LiveGauge::setReadOnly(bool readOnly) {
    m_open->setEnabled(!readOnly);
    m_setUp->setEnabled(!readOnly);
    if (m_panel != nullptr) {
        m_panel->setEnabled(!readOnly);
    }
}

}  // namespace hearth::ui::visit
