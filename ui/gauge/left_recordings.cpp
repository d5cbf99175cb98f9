// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gauge/left_recordings.h"

#include "ui/gauge/gauge_words.h"
#include "ui/gauge/journal.h"
#include "ui/shell/flow_layout.h"
#include "ui/shell/kit.h"

#include <algorithm>

namespace hearth::ui::gauge {

namespace {

/// More than anybody leaves; so many are read at once.
constexpr std::size_t kMostLeft = 5;

}  // namespace

LeftRecordings::LeftRecordings(const words::Words& words, QWidget* parent)
    : QWidget(parent), m_words(words), m_lines(new QVBoxLayout(this)) {
    m_lines->setContentsMargins(0, 0, 0, 0);
    m_lines->setSpacing(look::kGap);
    setObjectName(QStringLiteral("leftRecordings"));
    hide();
}

void LeftRecordings::look(const QString& folder, bool ofAir) {
    m_folder = folder;
    m_ofAir = ofAir;
    for (QWidget* row : m_rows) {
        row->hide();
        row->deleteLater();
    }
    m_rows.clear();
    if (!folder.isEmpty()) {
        for (const auto& left : leftRecordings(folder, ofAir, kMostLeft)) {
            add(left);
        }
    }
    setVisible(!m_rows.empty());
}

void LeftRecordings::add(const LeftRecording& left) {
    const auto& taken = left.taken;
    auto* row = new QWidget(this);
    auto* lines = new QVBoxLayout(row);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(look::kGap / 2);
    const QString began =
        taken.origin.beganAt
            ? QStringLiteral("%1, %2").arg(
                  shell::dayOf(m_words, *taken.origin.beganAt),
                  QString::fromStdString(wallTimeText(*taken.origin.beganAt, "Europe/London")))
            : tr("a time that is not known");
    QString text =
        tr("A recording was left: %1, begun %2, %n reading(s).", nullptr, static_cast<int>(taken.size()))
            .arg(QString::fromStdString(taken.origin.name), began);
    if (!taken.beside.empty()) {
        text += u' ' + tr("Beside it %1 was recorded, %n reading(s).", nullptr,
                          static_cast<int>(taken.beside.front().size()))
                           .arg(QString::fromStdString(taken.beside.front().origin.name));
    }
    if (taken.origin.isSimulated()) {
        text += u' ' + GaugeWords::simulated();
    }
    auto* label = shell::bodyText(text, row);
    label->setObjectName(QStringLiteral("leftRecording"));
    lines->addWidget(label);
    auto* buttons = new shell::FlowLayout(nullptr, look::kGap);
    auto* take = new shell::KeyButton(tr("Take this recording"), shell::ButtonKind::Plain, row);
    take->setObjectName(QStringLiteral("takeLeftButton"));
    take->setAccessibleName(tr("Take the recording begun %1").arg(began));
    connect(take, &QPushButton::clicked, this, [this, left] {
        m_wanted = left.paths;
        Q_EMIT wanted(left.taken);
    });
    auto* discard = new shell::KeyButton(tr("Throw it away"), shell::ButtonKind::Quiet, row);
    discard->setObjectName(QStringLiteral("discardLeftButton"));
    discard->setAccessibleName(tr("Throw away the recording begun %1").arg(began));
    connect(discard, &QPushButton::clicked, this, [this, paths = left.paths, discard] {
        if (!discard->property("asked").toBool()) {
            discard->setProperty("asked", true);
            discard->setWords(tr("Throw it away for good"));
            return;
        }
        std::for_each(paths.begin(), paths.end(), discardJournal);
        look(m_folder, m_ofAir);
    });
    buttons->addWidget(take);
    buttons->addWidget(discard);
    lines->addLayout(buttons);
    m_lines->addWidget(row);
    m_rows.push_back(row);
}

void LeftRecordings::taken() {
    if (!m_wanted.empty()) {
        std::for_each(m_wanted.begin(), m_wanted.end(), discardJournal);
        m_wanted.clear();
        look(m_folder, m_ofAir);
    }
}

}  // namespace hearth::ui::gauge
