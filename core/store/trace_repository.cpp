// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/trace_repository.h"

#include "core/quantity/units.h"
#include "core/record/snapshot.h"
#include "core/record/trace_text.h"
#include "core/store/bin_repository.h"
#include "core/store/edit.h"

#include <QByteArray>

#include <algorithm>
#include <cmath>

namespace hearth::store {
namespace {

/// What qCompress() puts before the packed bytes: how many they were, the highest byte first.
constexpr std::size_t kLengthBytes = 4;

std::size_t statedSize(std::string_view bytes) {
    std::size_t size = 0;
    for (std::size_t i = 0; i < kLengthBytes; ++i) {
        size = size * 256 + static_cast<unsigned char>(bytes[i]);
    }
    return size;
}

std::string channelsOf(const tightness::Trace& trace) {
    const bool hasBarometer = std::any_of(trace.begin(), trace.end(),
                                          [](const auto& point) { return point.barometer.has_value(); });
    const bool hasTemperature = std::any_of(trace.begin(), trace.end(),
                                            [](const auto& point) { return point.temperature.has_value(); });
    return std::string("pressure") + (hasBarometer ? " barometer" : "") +
           (hasTemperature ? " temperature" : "");
}

double traceFigure(const tightness::TracePoint& point) {
    return point.pressure.in(quantity::kMillibar);
}
double traceFigure(const air::CoReading& reading) {
    return reading.level.in(quantity::kPpm);
}

template <class Points>
void refuseUnusable(const std::string& name, const Points& points, std::size_t marks) {
    if (points.size() > Traces::kMostTracePoints) {
        throw Failure(ErrorCode::TraceTooLong,
                      {name, std::to_string(points.size()), std::to_string(Traces::kMostTracePoints)});
    }
    const typename Points::value_type* before = nullptr;
    for (const auto& point : points) {
        const bool isFigure =
            std::isfinite(point.at.in(quantity::kSecond)) && std::isfinite(traceFigure(point));
        if (!isFigure || (before != nullptr && point.at < before->at)) {
            throw Failure(ErrorCode::TraceUnusable, {name});
        }
        before = &point;
    }
    if (before == nullptr || marks > reg::kMostTraceMarks) {
        throw Failure(ErrorCode::TraceUnusable, {name});
    }
}

/// An issued record says its key. Another of the same readings is none of the record's.
std::optional<std::string> recordThatShows(const Connection& db, const reg::GaugeTrace& trace) {
    return db.first(
        "SELECT h.record FROM record_snapshots AS s JOIN record_headers AS h ON h.id = s.record "
        "WHERE s.visit = ? AND instr(s.json, ?) > 0 ORDER BY h.issued_at DESC",
        {trace.visit.bytes, Blob{trace.id.text()}}, [](const Columns& columns) { return columns.text(0); });
}

void refuseInRecord(const Connection& db, const reg::GaugeTrace& trace) {
    if (const auto record = recordThatShows(db, trace)) {
        throw Failure(ErrorCode::TraceInRecord, {trace.source.name, *record});
    }
}

/// What both kinds of trace have; whose they are and what they hold is the caller's.
template <class Points>
reg::GaugeTrace rowFor(const Session& session, const reg::TraceSource& source, const Points& points,
                       const std::string& text) {
    reg::GaugeTrace row;
    row.id = reg::GaugeTraceId{session.newId()};
    row.source = source;
    row.points = static_cast<int>(points.size());
    const auto lasts = points.back().at - points.front().at;
    row.milliseconds = static_cast<int>(std::lround(lasts.in(quantity::kSecond)*1000.0));
    row.size = static_cast<int>(text.size());
    row.digest = record::sha256(text);
    row.keptAt = session.clock.now();
    row.keptBy = session.actor;
    return row;
}

std::optional<std::string> textOfDigest(const Connection& db, const std::string& digest, std::size_t size) {
    const auto bytes = db.first("SELECT packed FROM trace_readings WHERE digest = ?", {digest},
                                [](const Columns& columns) { return columns.bytes(0); });
    auto text = bytes ? unpacked(*bytes, size) : std::nullopt;
    return text && record::sha256(*text) == digest ? text : std::nullopt;
}

void takeAway(Edit& edit, reg::GaugeTraceId id) {
    const auto& db = edit.session().db;
    const auto trace = valueWithId<reg::GaugeTrace>(db, id.bytes);
    refuseInRecord(db, trace);
    for (const auto& beside : valuesWhere<reg::GaugeTrace>(db, "WHERE t.beside = ?", {id.bytes})) {
        edit.remove(tableOf<reg::GaugeTrace>(), beside.id.bytes);
    }
    edit.remove(tableOf<reg::GaugeTrace>(), id.bytes);
}

void keepRow(Edit& edit, const reg::GaugeTrace& row, const std::string& text,
             const std::optional<reg::GaugeTraceId>& replaces) {
    auto& db = edit.session().db;
    const auto visit = valueWithId<reg::Visit>(db, row.visit.bytes);
    refuseBinned(db, {visit.id.bytes, visit.premises.bytes, visit.installation.bytes});
    if (replaces) {
        takeAway(edit, *replaces);
    }
    db.run("INSERT INTO trace_readings (digest, packed) VALUES (?, ?) ON CONFLICT (digest) DO NOTHING",
           {row.digest, Blob{packed(text)}});
    edit.put(row);
}

/// The readings as they were kept, read by `read`.
template <class Read>
auto readingsOf(const Connection& db, reg::GaugeTraceId id, const Read& read) {
    const auto trace = valueWithId<reg::GaugeTrace>(db, id.bytes);
    const auto text = textOfDigest(db, trace.digest, static_cast<std::size_t>(trace.size));
    auto readings = text ? read(*text) : std::nullopt;
    if (!readings) {
        throw Failure(ErrorCode::TraceAltered, {trace.source.name});
    }
    return std::move(*readings);
}

}  // namespace

std::string packed(std::string_view text) {
    constexpr int kSmallest = 9;
    return qCompress(QByteArray::fromRawData(text.data(), static_cast<qsizetype>(text.size())), kSmallest)
        .toStdString();
}

std::optional<std::string> unpacked(std::string_view bytes, std::size_t size) {
    // Looked at first: a turned bit there would ask for gigabytes.
    if (bytes.size() <= kLengthBytes || statedSize(bytes) != size) {
        return std::nullopt;
    }
    auto text = qUncompress(QByteArray::fromRawData(bytes.data(), static_cast<qsizetype>(bytes.size())))
                    .toStdString();
    return text.size() == size ? std::optional(std::move(text)) : std::nullopt;
}

reg::GaugeTraceId keepTrace(Session& session, const NewTrace& trace) {
    refuseUnusable(trace.source.name, trace.trace, trace.marks.size());
    if (trace.beside) {
        refuseUnusable(trace.beside->source.name, trace.beside->trace, 0);
    }
    Edit edit(session);
    const auto test = valueWithId<reg::Test>(session.db, trace.test.bytes);
    const auto rowOf = [&](const reg::TraceSource& source, const tightness::Trace& readings,
                           const std::string& text) {
        auto row = rowFor(session, source, readings, text);
        row.visit = test.visit;
        row.test = test.id;
        row.channels = channelsOf(readings);
        return row;
    };
    const std::string text = record::traceText(trace.trace);
    auto row = rowOf(trace.source, trace.trace, text);
    row.marks = reg::marksText(trace.marks);
    keepRow(edit, row, text, trace.replaces);
    if (trace.beside) {
        const std::string other = record::traceText(trace.beside->trace);
        auto second = rowOf(trace.beside->source, trace.beside->trace, other);
        second.beside = row.id;
        keepRow(edit, second, other, std::nullopt);
    }
    edit.commit();
    return row.id;
}

reg::GaugeTraceId keepRoomTrace(Session& session, const NewRoomTrace& trace) {
    refuseUnusable(trace.source.name, trace.readings, 0);
    Edit edit(session);
    const std::string text = record::roomTraceText(trace.readings);
    auto row = rowFor(session, trace.source, trace.readings, text);
    row.visit = trace.visit;
    row.channels = "co";
    keepRow(edit, row, text, trace.replaces);
    edit.commit();
    return row.id;
}

void markTrace(Session& session, reg::GaugeTraceId id, const reg::TraceMarks& marks) {
    Edit edit(session);
    auto trace = valueWithId<reg::GaugeTrace>(session.db, id.bytes);
    if (marks.size() > reg::kMostTraceMarks) {
        throw Failure(ErrorCode::TraceUnusable, {trace.source.name});
    }
    refuseInRecord(session.db, trace);
    trace.marks = reg::marksText(marks);
    edit.put(trace);
    edit.commit();
}

std::string recordOfTrace(const Connection& db, reg::GaugeTraceId id) {
    return recordThatShows(db, valueWithId<reg::GaugeTrace>(db, id.bytes)).value_or(std::string());
}

void removeTrace(Session& session, reg::GaugeTraceId id) {
    Edit edit(session);
    takeAway(edit, id);
    edit.commit();
}

tightness::Trace readTraceReadings(const Connection& db, reg::GaugeTraceId id) {
    return readingsOf(db, id, record::traceFromText);
}

std::vector<air::CoReading> readRoomTraceReadings(const Connection& db, reg::GaugeTraceId id) {
    return readingsOf(db, id, record::roomTraceFromText);
}

std::vector<reg::GaugeTrace> readTraces(const Connection& db, reg::VisitId visit) {
    return valuesWhere<reg::GaugeTrace>(db, "WHERE t.visit = ? ORDER BY t.kept_at, t.id", {visit.bytes});
}

std::vector<std::string> alteredTraces(const Connection& db) {
    std::vector<std::string> altered;
    // One at a time: all of a firm's may not fit into memory.
    for (const auto& trace : valuesWhere<reg::GaugeTrace>(db, "ORDER BY t.kept_at, t.id")) {
        if (!textOfDigest(db, trace.digest, static_cast<std::size_t>(trace.size))) {
            altered.push_back(trace.source.name);
        }
    }
    return altered;
}

std::int64_t dropUnusedReadings(Connection& db) {
    constexpr std::string_view kUnread =
        " FROM trace_readings WHERE NOT EXISTS (SELECT 1 FROM traces AS t WHERE t.digest = "
        "trace_readings.digest)";
    const auto freed = db.number("SELECT coalesce(sum(length(packed)), 0)" + std::string(kUnread));
    db.run("DELETE" + std::string(kUnread));
    return freed;
}

}  // namespace hearth::store
