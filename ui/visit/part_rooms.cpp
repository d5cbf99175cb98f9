// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/kit.h"
#include "ui/shell/plot_view.h"
#include "ui/visit/asked_part.h"
#include "ui/visit/parts.h"
#include "ui/visit/room_rows.h"
#include "ui/visit/room_series.h"
#include "ui/visit/room_trace_area.h"
#include "ui/visit/room_watch.h"
#include "ui/visit/what_first.h"
#include "ui/words/plot_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <chrono>

namespace hearth::ui::visit {

namespace {

using reg::Item;
using words::Words;

constexpr std::array kRoomColumns{RoomRows::Column{Item::RoomName, 6},
                                  RoomRows::Column{Item::RoomCoAlarm, 3},
                                  RoomRows::Column{Item::RoomCoAlarmExpiry, 3},
                                  RoomRows::Column{Item::RoomSmokeAlarm, 3},
                                  RoomRows::Column{Item::RoomSmokeAlarmExpiry, 3},
                                  RoomRows::Column{Item::RoomAlarmNotes, 6},
                                  RoomRows::Column{Item::RoomFinding, 6}};
constexpr std::array kReadingColumns{RoomRows::Column{Item::RoomCoPlace, 6},
                                     RoomRows::Column{Item::RoomCoAt, 3}, RoomRows::Column{Item::RoomCo, 3}};

bool hasAlarm(const reg::VisitFile& file, const reg::SubjectRef& room, Item alarm) {
    const auto code = file.choiceOf(room, alarm);
    return !code.empty() && code != reg::choice::kNone && code != reg::choice::kNotNeeded;
}

/// What both parts of rooms share: rows, each with the field that begins it.
class OfRooms : public AskedPart {
  public:
    using AskedPart::AskedPart;
    void refresh() override {
        if (m_rows != nullptr && m_rows->show(there())) {
            Q_EMIT stopsChanged();
        }
        AskedPart::refresh();
    }

  protected:
    void addRows(std::span<const RoomRows::Column> columns) {
        m_begins = columns.front().item;
        m_rows = new RoomRows(
            context(), columns,
            {[this](shell::Fields* fields, const reg::SubjectRef& on, const RoomRows::Column& column) {
                 return addItemOf(fields, on, column.item, column.span);
             },
             [this](const reg::SubjectRef& on) { drop(on); }},
            this);
        addWidget(m_rows);
    }
    [[nodiscard]] virtual std::vector<reg::SubjectRef> there() const = 0;
    [[nodiscard]] bool isShown(const FieldKey& key) const override {
        if (key.subject.kind != reg::SubjectKind::Room) {
            return AskedPart::isShown(key);
        }
        return key.item == m_begins || (!m_rows->isWaiting(key.subject) && isOfRow(*key.item, key.subject)) ||
               model().file().find(key.subject, *key.item) != nullptr;
    }
    [[nodiscard]] virtual bool isOfRow(Item item, const reg::SubjectRef& on) const = 0;

  private:
    RoomRows* m_rows = nullptr;
    std::optional<Item> m_begins;
};

/// Rooms and their alarms: a name begins a room.
class RoomsPart : public OfRooms {
    Q_DECLARE_TR_FUNCTIONS(hearth::ui::visit::RoomsPart)
  public:
    RoomsPart(const SheetContext& context, QWidget* parent) : OfRooms(context, {PartKind::Rooms}, parent) {
        setSubtitle(tr("A name begins a room. Alarms are tested by their button."));
        addRows(kRoomColumns);
        addMore();
    }

  protected:
    [[nodiscard]] std::vector<reg::SubjectRef> there() const override { return model().file().rooms(); }
    [[nodiscard]] bool isOfRow(Item item, const reg::SubjectRef& on) const override {
        const reg::VisitFile& file = model().file();
        switch (item) {
            case Item::RoomCoAlarm:
            case Item::RoomSmokeAlarm:
                return true;
            case Item::RoomCoAlarmExpiry:
                return showsAll() || hasAlarm(file, on, Item::RoomCoAlarm);
            case Item::RoomSmokeAlarmExpiry:
                return showsAll() || hasAlarm(file, on, Item::RoomSmokeAlarm);
            case Item::RoomFinding:
                return file.choiceOf(reg::subject(file.visit.id), Item::VisitRoomCo) == reg::choice::kYes;
            default:
                return showsAll();
        }
    }
};

/// An investigation of CO or fumes: what to do first, the call, the readings as a table.
class InvestigationPart : public OfRooms {
    Q_DECLARE_TR_FUNCTIONS(hearth::ui::visit::InvestigationPart)
  public:
    InvestigationPart(const SheetContext& context, QWidget* parent)
        : OfRooms(context, {PartKind::Investigation}, parent), m_whatFirst(new WhatFirst(this)) {
        addWidget(m_whatFirst);
        addGroups(investigationGroups());
        addHeading(tr("Readings: outdoors first"));
        addWidget(shell::softText(tr("Ctrl+Enter in a reading keeps its time; the first begins the series."),
                                  this));
        addRows(kReadingColumns);
        m_plots = new shell::PlotView(this);
        addWidget(m_plots);
        addWatch();
        addMore();
    }
    void refresh() override {
        const reg::VisitFile& file = model().file();
        const auto event = Words::Emergency::CarbonMonoxide;
        m_whatFirst->setSteps(words().emergencyTitle(event),
                              words().emergencySteps(event, file.installation.gas, file.premises.country,
                                                     file.emergencyContacts));
        OfRooms::refresh();
        m_plots->show(words::roomPlots({file, model().findings(), words()}));
        m_watch->refresh();
        m_trace->refresh();
    }
    bool toggleClock() override;
    void setReadOnly(bool readOnly) override {
        OfRooms::setReadOnly(readOnly);
        m_watch->setReadOnly(readOnly);
        m_trace->setReadOnly(readOnly);
    }

  protected:
    [[nodiscard]] std::vector<reg::SubjectRef> there() const override {
        return model().file().roomReadings();
    }
    [[nodiscard]] bool isOfRow(Item, const reg::SubjectRef&) const override { return true; }

  private:
    [[nodiscard]] std::optional<reg::SubjectRef> readingAtFocus() const;
    void addWatch();

    WhatFirst* m_whatFirst;
    shell::PlotView* m_plots = nullptr;
    RoomWatch* m_watch = nullptr;
    RoomTraceArea* m_trace = nullptr;
};

void InvestigationPart::addWatch() {
    addHeading(tr("Watched from outside the room"));
    m_watch = new RoomWatch(context(), this);
    addWidget(m_watch);
    m_trace = new RoomTraceArea(context(), this);
    addWidget(m_trace);
    const auto say = [this](const QString& sentence) { context().window.navigator.say(sentence); };
    connect(m_watch, &RoomWatch::said, this, say);
    connect(m_watch, &RoomWatch::urgent, this, &PartView::urgent);
    connect(m_watch, &RoomWatch::stopsChanged, this, &PartView::stopsChanged);
    connect(m_trace, &RoomTraceArea::said, this, say);
    connect(m_trace, &RoomTraceArea::stopsChanged, this, &PartView::stopsChanged);
    m_watch->setReadOnly(model().isReadOnly());
    m_trace->setReadOnly(model().isReadOnly());
}

/// The reading whose row has the keyboard.
std::optional<reg::SubjectRef> InvestigationPart::readingAtFocus() const {
    for (const SheetField* field : fields()) {
        const bool hasFocus = field->editor()->focusTarget()->hasFocus();
        if (hasFocus && field->key().subject.kind == reg::SubjectKind::Room) {
            return field->key().subject;
        }
    }
    return std::nullopt;
}

/// Keeps the time of the reading in whose row the keyboard is: the first begins the series, the others have
/// their minutes since then. The store keeps when it began, so that it goes on after another start.
bool InvestigationPart::toggleClock() {
    if (m_watch->toggle()) {
        return true;
    }
    const auto reading = readingAtFocus();
    if (!reading || model().isReadOnly()) {
        return false;
    }
    const Instant now = context().window.clock.now();
    const auto began = seriesBegan(model());
    const bool runs = began.has_value();
    const auto minutes = std::chrono::duration<double, std::ratio<60>>(now - began.value_or(now)).count();
    auto kept = runs ? Result<void>() : beginSeries(model(), now);
    if (kept) {
        kept = model().enter(*reading, Item::RoomCoAt, minutesText(minutes), quantity::UnitCode::Minute);
    }
    auto& navigator = context().window.navigator;
    navigator.say(!kept  ? words().error(kept.error())
                  : runs ? tr("The reading's time is kept.")
                         : tr("The series of readings begins now."));
    return true;
}

/// Pipework beyond the small domestic.
class LargerPart : public AskedPart {
  public:
    LargerPart(const SheetContext& context, QWidget* parent)
        : AskedPart(context, {PartKind::Larger}, parent) {
        addGroups(largerGroups());
        addMore();
    }
};

}  // namespace

PartView* makeRoomsPart(const SheetContext& context, QWidget* parent) {
    return new RoomsPart(context, parent);
}
PartView* makeInvestigationPart(const SheetContext& context, QWidget* parent) {
    return new InvestigationPart(context, parent);
}
PartView* makeLargerPart(const SheetContext& context, QWidget* parent) {
    return new LargerPart(context, parent);
}

}  // namespace hearth::ui::visit
