// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <functional>
#include <memory>

class QWidget;

namespace hearth::app {

/// A window that says what is being waited for. It shows itself once a person would begin to wonder, and goes
/// when it is destroyed.
[[nodiscard]] std::unique_ptr<QWidget> makeWaitingNotice(const QString& sentence);

/// Does the work in a thread of its own, with that notice, and returns when it is done: also when a person
/// closes the notice.
void doWaiting(const std::function<void()>& work, const QString& sentence);

}  // namespace hearth::app
