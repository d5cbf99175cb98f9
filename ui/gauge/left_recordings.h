// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/gauge/taken.h"
#include "ui/words/words.h"

#include <QString>
#include <QWidget>

#include <optional>
#include <vector>

class QVBoxLayout;

namespace hearth::ui::gauge {

struct LeftRecording;

/// Recordings that a machine or program that failed has left, each to be taken or thrown away. Hidden while
/// there are none. Throwing away asks again on its own button.
class LeftRecordings : public QWidget {
    Q_OBJECT
  public:
    LeftRecordings(const words::Words& words, QWidget* parent);
    /// Looks into the folder again, for those of pressures or of carbon monoxide.
    void look(const QString& folder, bool ofAir = false);
    /// The one that was taken is kept by now: its journal goes.
    void taken();

  Q_SIGNALS:
    void wanted(const hearth::ui::gauge::TakenTrace& taken);

  private:
    void add(const LeftRecording& left);
    const words::Words& m_words;
    QString m_folder;
    bool m_ofAir = false;
    QVBoxLayout* m_lines;
    std::vector<QWidget*> m_rows;
    std::vector<QString> m_wanted;  // the journals of what was handed out
};

}  // namespace hearth::ui::gauge
