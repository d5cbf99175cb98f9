// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/input/editor.h"
#include "ui/workings/workings_model.h"

/// The editor of an item on a question's sheet: from the catalogue alone, so that a new question needs none
/// of its own.
namespace hearth::ui::workings {

/// A field of a form, or one of a row of many.
enum class Room { Form, Row };

[[nodiscard]] input::Editor* makeWorkEditor(QWidget* parent, reg::Item item, const shell::Context& context,
                                            Room room);
/// How many of a form's twelve columns the editor and its label want.
[[nodiscard]] int spanOf(reg::Item item, const words::Words& words, Room room, int formWidth);
/// Whether a field of a form begins a line, since it begins something new (the readings at the lowest rate).
[[nodiscard]] bool startsLine(reg::Item item);
/// How wide an item's column of a table is.
[[nodiscard]] int columnWidth(reg::Item item, const words::Words& words);
/// Why a text can't be used; empty: it can.
[[nodiscard]] QString problemOf(reg::Item item, const QString& text, const words::Words& words);
/// The name of a field for code: "room_co.distance"; of a row its group and number stand before it.
[[nodiscard]] QString fieldName(const FieldAt& at);
/// What was typed, as it is read out: with its unit, a choice by its label.
[[nodiscard]] QString spokenValue(const reg::Entry& entry, const words::Words& words);

}  // namespace hearth::ui::workings
