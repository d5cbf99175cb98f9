// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/duties.h"

#include <QObject>
#include <QThread>

#include <filesystem>
#include <memory>
#include <optional>

namespace hearth::ui::due {

/// Counts the duties beside the checks in a thread of its own: the list is painted meanwhile, and keys are
/// answered.
class DutyCounter : public QObject {
    Q_OBJECT
  public:
    explicit DutyCounter(std::filesystem::path store, QObject* parent = nullptr);
    /// Waits for a count that is under way.
    ~DutyCounter() override;

    /// While one is under way it is done once more afterwards: what it reads may be of before.
    void count(calendar::Date today);
    [[nodiscard]] bool isBusy() const { return m_thread != nullptr; }

  Q_SIGNALS:
    void counted(const hearth::store::DutyCount& count);
    void failed(const hearth::Error& error);

  private:
    void take();

    std::filesystem::path m_store;
    std::unique_ptr<QThread> m_thread;
    std::shared_ptr<Result<store::DutyCount>> m_found;
    std::optional<calendar::Date> m_again;
};

}  // namespace hearth::ui::due
