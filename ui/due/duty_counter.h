// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/duties.h"
#include "ui/shell/beside.h"

#include <QObject>

#include <filesystem>

namespace hearth::ui::due {

/// Counts the duties beside the checks in a thread of its own: the list is painted meanwhile, and keys are
/// answered.
class DutyCounter : public QObject {
    Q_OBJECT
  public:
    explicit DutyCounter(std::filesystem::path store, QObject* parent = nullptr);

    /// While one is under way it is done once more afterwards: what it reads may be of before.
    void count(calendar::Date today);
    [[nodiscard]] bool isBusy() const { return m_counting.isBusy(); }

  Q_SIGNALS:
    void counted(const hearth::store::DutyCount& count);
    void failed(const hearth::Error& error);

  private:
    std::filesystem::path m_store;
    shell::Beside<store::DutyCount> m_counting;
};

}  // namespace hearth::ui::due
