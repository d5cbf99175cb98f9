// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/sqlite_store.h"
#include "core/store/trace_repository.h"

namespace hearth::store {

Result<reg::GaugeTraceId> SqliteStore::keepTrace(const NewTrace& trace) {
    return changing([&] { return store::keepTrace(m_session, trace); });
}
Result<reg::GaugeTraceId> SqliteStore::keepRoomTrace(const NewRoomTrace& trace) {
    return changing([&] { return store::keepRoomTrace(m_session, trace); });
}
Result<void> SqliteStore::markTrace(reg::GaugeTraceId id, const reg::TraceMarks& marks) {
    return changing([&] { store::markTrace(m_session, id, marks); });
}
Result<std::string> SqliteStore::recordOfTrace(reg::GaugeTraceId id) const {
    return guarded([&] { return store::recordOfTrace(m_db, id); });
}
Result<void> SqliteStore::removeTrace(reg::GaugeTraceId id) {
    return changing([&] { store::removeTrace(m_session, id); });
}
Result<tightness::Trace> SqliteStore::traceReadings(reg::GaugeTraceId id) const {
    return guarded([&] { return readTraceReadings(m_db, id); });
}
Result<std::vector<air::CoReading>> SqliteStore::roomTraceReadings(reg::GaugeTraceId id) const {
    return guarded([&] { return readRoomTraceReadings(m_db, id); });
}

}  // namespace hearth::store
