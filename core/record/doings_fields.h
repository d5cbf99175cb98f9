// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/register_fields.h"
#include "core/register/checks_kept.h"
#include "core/register/gauge_trace.h"
#include "core/register/hand_signature.h"

/// The fields of appliances and of what is done around premises, named once (see register_fields.h).
///     owner(name, UuidBytes)       the key of a row of whatever table
///     instant(name, Instant or optional Instant)
namespace hearth::record {

#define HEARTH_CODE(Type, toText, fromText)                                                \
    template <>                                                                            \
    struct CodeOf<Type> {                                                                  \
        static std::string_view text(Type value) { return toText(value); }                 \
        static std::optional<Type> value(std::string_view code) { return fromText(code); } \
    }
HEARTH_CODE(reg::Owner, reg::codeOf, reg::ownerFromCode);
HEARTH_CODE(reg::FlueType, reg::codeOf, reg::flueTypeFromCode);
HEARTH_CODE(reg::Channel, reg::codeOf, reg::channelFromCode);
HEARTH_CODE(reg::BookingState, reg::codeOf, reg::bookingStateFromCode);
HEARTH_CODE(reg::Danger, reg::codeOf, reg::dangerFromCode);
HEARTH_CODE(calendar::CheckDuty, reg::codeOf, reg::checkDutyFromCode);
HEARTH_CODE(reg::Signer, reg::codeOf, reg::signerFromCode);
HEARTH_CODE(reg::SignedWay, reg::codeOf, reg::signedWayFromCode);
HEARTH_CODE(reg::TraceOrigin, reg::codeOf, reg::traceOriginFromCode);
#undef HEARTH_CODE

template <class Archive, Is<reg::Appliance> Value>
void describe(Archive& archive, Value& appliance) {
    archive.id("id", appliance.id);
    archive.link("installation", appliance.installation);
    archive.number("position", appliance.position);
    archive.text("kind", appliance.kind);
    archive.text("make", appliance.make);
    archive.text("model", appliance.model);
    archive.text("serial", appliance.serial);
    archive.text("gc_number", appliance.gcNumber);
    archive.text("place", appliance.place);
    archive.code("flue", appliance.flue);
    archive.code("gas", appliance.gas);
    archive.typed("net_input", appliance.netInput);
    archive.typed("gross_input", appliance.grossInput);
    archive.date("installed_on", appliance.installedOn);
    archive.text("installed_on_text", appliance.installedOnText);
    archive.code("owner", appliance.owner);
    archive.typed("maker_ratio", appliance.makerRatio);
    archive.typed("maker_co", appliance.makerCo);
    archive.typed("maker_inlet_least", appliance.makerInletLeast);
    archive.typed("maker_inlet_most", appliance.makerInletMost);
    archive.typed("maker_burner_least", appliance.makerBurnerLeast);
    archive.typed("maker_burner_most", appliance.makerBurnerMost);
    archive.typed("maker_tolerance", appliance.makerTolerance);
    archive.text("maker_source", appliance.makerSource);
    archive.date("removed_on", appliance.removedOn);
    archive.text("removed_on_text", appliance.removedOnText);
    archive.text("notes", appliance.notes);
}

template <class Archive, Is<reg::Competence> Value>
void describe(Archive& archive, Value& competence) {
    archive.id("id", competence.id);
    archive.link("engineer", competence.engineer);
    archive.text("category", competence.category);
    archive.date("expires", competence.expires);
    archive.text("expires_text", competence.expiresText);
}

template <class Archive, Is<reg::AccessAttempt> Value>
void describe(Archive& archive, Value& attempt) {
    archive.id("id", attempt.id);
    archive.link("premises", attempt.premises);
    archive.instant("at", attempt.at);
    archive.text("who", attempt.who);
    archive.code("channel", attempt.channel);
    archive.text("what_was_left", attempt.left);
    archive.text("response", attempt.response);
    archive.text("next_step", attempt.nextStep);
    archive.date("next_on", attempt.nextOn);
}

template <class Archive, Is<reg::Letter> Value>
void describe(Archive& archive, Value& letter) {
    archive.id("id", letter.id);
    archive.link("premises", letter.premises);
    archive.link("party", letter.party);
    archive.text("kind", letter.kind);
    archive.code("channel", letter.channel);
    archive.text("sent_to", letter.sentTo);
    archive.text("text", letter.text);
    archive.instant("at", letter.at);
    archive.text("result", letter.result);
}

template <class Archive, Is<reg::Booking> Value>
void describe(Archive& archive, Value& booking) {
    archive.id("id", booking.id);
    archive.link("premises", booking.premises);
    archive.link("visit", booking.visit);
    archive.link("engineer", booking.engineer);
    archive.date("date", booking.date);
    archive.text("from_time", booking.from);
    archive.text("until_time", booking.until);
    archive.code("state", booking.state);
    archive.text("note", booking.note);
    archive.number("sequence", booking.sequence);
}

template <class Archive, Is<reg::Situation> Value>
void describe(Archive& archive, Value& situation) {
    archive.id("id", situation.id);
    archive.link("premises", situation.premises);
    archive.link("installation", situation.installation);
    archive.link("appliance", situation.appliance);
    archive.link("visit", situation.visit);
    archive.instant("found_at", situation.foundAt);
    archive.code("danger", situation.danger);
    archive.text("what", situation.what);
    archive.text("place", situation.where);
    archive.instant("closed_at", situation.closedAt);
}

template <class Archive, Is<reg::SituationEvent> Value>
void describe(Archive& archive, Value& event) {
    archive.id("id", event.id);
    archive.link("situation", event.situation);
    archive.instant("at", event.at);
    archive.text("kind", event.kind);
    archive.text("text", event.text);
    archive.text("by", event.by);
}

template <class Archive, Is<reg::EmergencyContact> Value>
void describe(Archive& archive, Value& contact) {
    archive.id("id", contact.id);
    archive.code("country", contact.country);
    archive.code("gas", contact.gas);
    archive.text("name", contact.name);
    archive.text("number", contact.number);
}

template <class Archive, Is<reg::Attachment> Value>
void describe(Archive& archive, Value& attachment) {
    archive.id("id", attachment.id);
    archive.text("owner_table", attachment.ownerTable);
    archive.owner("owner", attachment.owner);
    archive.text("name", attachment.name);
    archive.text("media_type", attachment.mediaType);
    archive.number("size", attachment.size);
    archive.text("digest", attachment.digest);
    archive.instant("added_at", attachment.addedAt);
    archive.text("added_by", attachment.addedBy);
    archive.flag("place_kept", attachment.placeKept);
    archive.text("note", attachment.note);
    archive.link("in_record_of", attachment.inRecordOf);
}

template <class Archive, Is<reg::HandSignature> Value>
void describe(Archive& archive, Value& signature) {
    archive.id("id", signature.id);
    archive.link("visit", signature.visit);
    archive.text("record_kind", signature.recordKind);
    archive.number("issue", signature.issue);
    archive.code("signer", signature.signer);
    archive.code("way", signature.way);
    archive.text("name", signature.name);
    archive.text("role", signature.role);
    archive.text("strokes", signature.strokes);
    archive.text("copy_left", signature.copyLeft);
    archive.instant("signed_at", signature.at);
}

template <class Archive, Is<reg::GaugeTrace> Value>
void describe(Archive& archive, Value& trace) {
    archive.id("id", trace.id);
    archive.link("visit", trace.visit);
    archive.link("test", trace.test);
    archive.text("source", trace.source.name);
    archive.code("origin", trace.source.origin);
    archive.flag("simulated", trace.source.isSimulated);
    archive.instant("began_at", trace.source.beganAt);
    archive.typed("resolution", trace.source.resolution);
    archive.text("channels", trace.channels);
    archive.number("points", trace.points);
    archive.number("milliseconds", trace.milliseconds);
    archive.number("size", trace.size);
    archive.text("digest", trace.digest);
    archive.text("marks", trace.marks);
    archive.instant("kept_at", trace.keptAt);
    archive.text("kept_by", trace.keptBy);
    archive.typed("zero_reads", trace.source.zero.reads);
    archive.typed("zero_step", trace.source.zero.step);
    archive.instant("zero_at", trace.source.zero.at);
    archive.flag("zero_is", trace.source.zero.isZero);
    archive.link("beside", trace.beside);
}

template <class Archive, Is<reg::Binned> Value>
void describe(Archive& archive, Value& binned) {
    archive.id("id", binned.id);
    archive.text("table_name", binned.table);
    archive.owner("row", binned.row);
    archive.text("label", binned.label);
    archive.instant("at", binned.at);
    archive.text("by", binned.by);
}

template <class Archive, Is<reg::CheckPlan> Value>
void describe(Archive& archive, Value& plan) {
    archive.id("id", plan.id);
    archive.link("premises", plan.premises);
    archive.code("duty", plan.duty);
    archive.number("months", plan.months);
    archive.date("lease_begins", plan.leaseBegins);
}

template <class Archive, Is<reg::EarlierCheck> Value>
void describe(Archive& archive, Value& check) {
    archive.id("id", check.id);
    archive.link("premises", check.premises);
    archive.link("appliance", check.appliance);
    archive.date("date", check.date);
    archive.text("made_by", check.by);
    archive.text("note", check.note);
    archive.link("visit", check.visit);
}

template <class Archive, Is<reg::CheckExtension> Value>
void describe(Archive& archive, Value& extension) {
    archive.id("id", extension.id);
    archive.link("premises", extension.premises);
    archive.link("appliance", extension.appliance);
    archive.date("others_due", extension.othersDue);
}

}  // namespace hearth::record
