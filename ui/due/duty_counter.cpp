// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/due/duty_counter.h"

#include <utility>

namespace hearth::ui::due {

DutyCounter::DutyCounter(std::filesystem::path store, QObject* parent)
    : QObject(parent), m_store(std::move(store)) {}

DutyCounter::~DutyCounter() {
    if (m_thread) {
        m_thread->wait();
    }
}

void DutyCounter::count(calendar::Date today) {
    if (isBusy()) {
        m_again = today;
        return;
    }
    m_found = std::make_shared<Result<store::DutyCount>>();
    m_thread.reset(QThread::create(
        [path = m_store, today, found = m_found] { *found = store::countDuties(path, today); }));
    connect(m_thread.get(), &QThread::finished, this, &DutyCounter::take);
    m_thread->start(QThread::LowPriority);
}

void DutyCounter::take() {
    m_thread->wait();
    m_thread.reset();
    if (m_again) {
        count(*std::exchange(m_again, std::nullopt));
    } else if (*m_found) {
        Q_EMIT counted(**m_found);
    } else {
        Q_EMIT failed(m_found->error());
    }
}

}  // namespace hearth::ui::due
