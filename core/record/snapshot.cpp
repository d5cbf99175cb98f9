// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/snapshot.h"

#include "core/record/doings_fields.h"
#include "core/record/json_parts.h"

#include <algorithm>
#include <stdexcept>
#include <tuple>
#include <utility>

namespace hearth::record {
namespace {

using record::jsonOf;  // those of the header beside those below

/// Fields of a register value into one JSON object.
class JsonArchive {
  public:
    static constexpr bool kStaysInside = false;

    template <class Key>
    void id(const char* name, const Key& key) {
        m_json[name] = key.text();
    }
    template <class Key>
    void link(const char* name, const Id<Key>& key) {
        m_json[name] = key.text();
    }
    template <class Key>
    void link(const char* name, const std::optional<Id<Key>>& key) {
        m_json[name] = key ? Json(key->text()) : Json(nullptr);
    }
    void text(const char* name, const std::string& text) { m_json[name] = text; }
    void secret(const char* /*name*/, const std::string& /*text*/) {}
    void number(const char* name, int number) { m_json[name] = std::to_string(number); }
    void flag(const char* name, bool flag) { m_json[name] = flag; }
    template <class Enumeration>
    void code(const char* name, Enumeration value) {
        m_json[name] = CodeOf<Enumeration>::text(value);
    }
    void typed(const char* name, const quantity::Typed& typed) {
        m_json[name] = typed.text;
        m_json[std::string(name) + "_unit"] = quantity::unitText(typed.unit);
    }
    void date(const char* name, const std::optional<calendar::Date>& date) {
        m_json[name] = date ? Json(calendar::isoText(*date)) : Json(nullptr);
    }
    void instant(const char* name, Instant instant) { m_json[name] = instantText(instant); }
    void instant(const char* name, const std::optional<Instant>& instant) {
        m_json[name] = instant ? Json(instantText(*instant)) : Json(nullptr);
    }

    [[nodiscard]] Json take() { return std::move(m_json); }

  private:
    Json m_json = Json::object();
};

template <class Value>
Json registerJson(const Value& value) {
    JsonArchive archive;
    describe(archive, value);
    return archive.take();
}

template <class Value>
Json registerList(const std::vector<Value>& values) {
    Json list = Json::array();
    for (const auto& value : values) {
        list.push_back(registerJson(value));
    }
    return list;
}

Json jsonOf(const reg::SubjectRef& subject) {
    return {{"kind", reg::codeOf(subject.kind)}, {"id", uuidText(subject.id)}};
}

Json jsonOf(const reg::Entry& entry) {
    return {
        {"id", entry.id.text()},
        {"subject", jsonOf(entry.subject)},
        {"item", reg::infoOf(entry.item).code},
        {"text", entry.text},
        {"unit", quantity::unitText(entry.unit)},
        {"canonical", entry.canonical},
        {"instrument", entry.instrument ? Json(entry.instrument->text()) : Json(nullptr)},
        {"at", instantText(entry.at)},
        {"by", entry.by},
    };
}

/// Entries in an order of their own, so that equal snapshots are equal whatever order they were read in.
Json entriesJson(std::vector<reg::Entry> entries) {
    std::sort(entries.begin(), entries.end(), [](const reg::Entry& a, const reg::Entry& b) {
        return std::tie(a.subject, a.item) < std::tie(b.subject, b.item);
    });
    Json list = Json::array();
    for (const auto& entry : entries) {
        list.push_back(jsonOf(entry));
    }
    return list;
}

bool isUsed(const reg::VisitFile& file, reg::InstrumentId id) {
    return std::any_of(file.entries.begin(), file.entries.end(), [&](const reg::Entry& entry) {
        return entry.instrument == id || entry.text == id.text();
    });
}

/// A record stands on the engineer and the instruments of its visit; the firm's others are nobody's business.
Json usedInstruments(const reg::VisitFile& file) {
    Json list = Json::array();
    for (const auto& instrument : file.instruments) {
        if (isUsed(file, instrument.id)) {
            list.push_back(registerJson(instrument));
        }
    }
    return list;
}

Json peopleJson(const reg::VisitFile& file) {
    Json list = Json::array();
    for (const auto& holder : file.people) {
        list.push_back({{"role", reg::codeOf(holder.role)}, {"party", registerJson(holder.party)}});
    }
    return list;
}

/// What was signed for this record; a visit's other kinds have their own.
Json signaturesJson(const reg::VisitFile& file, const std::string& kind) {
    Json list = Json::array();
    for (const auto& signature : file.signatures) {
        if (signature.recordKind == kind) {
            list.push_back(registerJson(signature));
        }
    }
    return list;
}

/// The trace that its test goes by, or of a second gauge beside that one: the others are not shown.
bool isShown(const reg::VisitFile& file, const reg::GaugeTrace& trace) {
    const auto* used = file.traceOf(*trace.test);
    return used != nullptr && (used->id == trace.id || trace.beside == used->id);
}

/// What gauges saw of the tests, or an instrument of the rooms: whichever a document of that kind says.
Json tracesJson(const reg::VisitFile& file, const std::string& kind) {
    const bool ofTests = kind == kindCode(RecordKind::TightnessAndPurge);
    const bool ofRooms = kind == kindCode(RecordKind::RoomInvestigation);
    Json list = Json::array();
    for (const auto& trace : file.traces) {
        if (trace.test ? ofTests && isShown(file, trace) : ofRooms) {
            list.push_back(registerJson(trace));
        }
    }
    return list;
}

Json jsonOf(const reg::VisitFile& file, const std::string& kind) {
    const reg::Engineer* engineer = file.engineer();
    Json json = {
        {"firm", registerJson(file.firm)},
        {"visit", registerJson(file.visit)},
        {"premises", registerJson(file.premises)},
        {"installation", registerJson(file.installation)},
        {"pipes", registerList(file.pipes)},
        {"tests", registerList(file.tests)},
        {"entries", entriesJson(file.entries)},
        {"engineer", engineer != nullptr ? registerJson(*engineer) : Json(nullptr)},
        {"instruments", usedInstruments(file)},
        {"people", peopleJson(file)},
        {"appliances", registerList(file.appliances)},
        {"situations", registerList(file.situations)},
    };
    // Only where there are any, so that a record without them is the same to the byte as before there were.
    if (Json signatures = signaturesJson(file, kind); !signatures.empty()) {
        json["signatures"] = std::move(signatures);
    }
    if (Json traces = tracesJson(file, kind); !traces.empty()) {
        json["traces"] = std::move(traces);
    }
    return json;
}

Json jsonOf(const std::vector<judging::Judged>& findings) {
    Json list = Json::array();
    for (const auto& judged : findings) {
        Json json = jsonOf(judged.finding);
        json["subject"] = jsonOf(judged.subject);
        json["about"] = Json::array();
        for (const auto item : judged.about) {
            json["about"].push_back(reg::infoOf(item).code);
        }
        list.push_back(std::move(json));
    }
    return list;
}

/// "12 High Street, Town, AB1 2CD"
std::string oneLine(const reg::Address& address) {
    std::string line;
    for (const auto& part : {address.line1, address.line2, address.town, address.postcode}) {
        if (!part.empty()) {
            line.append(line.empty() ? "" : ", ").append(part);
        }
    }
    return line;
}

std::string customerOf(const reg::VisitFile& file) {
    for (const auto role : {reg::RoleKind::Customer, reg::RoleKind::Landlord, reg::RoleKind::HomeOwner}) {
        if (const reg::Party* party = file.holder(role)) {
            return party->name;
        }
    }
    return {};
}

Json jsonOf(const Standing& standing) {
    return {
        {"visit", standing.visit.text()},
        {"premises", standing.premises.text()},
        {"address", standing.address},
        {"customer", standing.customer},
        {"outcome", rulebook::outcomeText(standing.outcome)},
        {"supersedes", standing.supersedes},
        {"reason", standing.reason},
    };
}

Standing standingFrom(const Json& json) {
    const auto outcome = rulebook::outcomeFromText(json.at("outcome").get<std::string>());
    const auto visit = uuidFromText(json.at("visit").get<std::string>());
    const auto premises = uuidFromText(json.at("premises").get<std::string>());
    return {{visit.value()}, {premises.value()},    json.at("address"), json.at("customer"),
            outcome.value(), json.at("supersedes"), json.at("reason")};
}

/// Raised when the shape changes, so that a later program knows what it reads.
constexpr auto kFormat = "1";

}  // namespace

Standing standingOf(const Snapshot& snapshot) {
    const reg::VisitFile& file = snapshot.file;
    return {file.visit.id,    file.premises.id, oneLine(file.premises.address),
            customerOf(file), snapshot.outcome, snapshot.supersedes,
            snapshot.reason};
}

std::string canonicalJson(const Snapshot& snapshot) {
    return canonicalText({
        {"format", kFormat},
        {"standing", jsonOf(standingOf(snapshot))},
        {"document", jsonOf(snapshot.document)},
        {"file", jsonOf(snapshot.file, snapshot.document.kind)},
        {"findings", jsonOf(snapshot.findings)},
    });
}

Result<Document> documentFromJson(std::string_view json) {
    try {
        return documentOf(Json::parse(json).at("document"));
    } catch (const std::exception&) {
        return fail(ErrorCode::RecordAltered, {std::string(), "snapshot"});
    }
}

Result<Standing> standingFromJson(std::string_view json) {
    try {
        return standingFrom(Json::parse(json).at("standing"));
    } catch (const std::exception&) {
        return fail(ErrorCode::RecordAltered, {std::string(), "snapshot"});
    }
}

}  // namespace hearth::record
