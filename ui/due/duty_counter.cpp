// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/due/duty_counter.h"

#include <utility>

namespace hearth::ui::due {

DutyCounter::DutyCounter(std::filesystem::path store, QObject* parent)
    : QObject(parent), m_store(std::move(store)), m_counting([this](const Result<store::DutyCount>& count) {
          if (count) {
              Q_EMIT counted(*count);
          } else {
              Q_EMIT failed(count.error());
          }
      }) {}

void DutyCounter::count(calendar::Date today) {
    m_counting.start([path = m_store, today] { return store::countDuties(path, today); });
}

}  // namespace hearth::ui::due
