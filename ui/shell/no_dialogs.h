// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/dialogs.h"

namespace hearth::ui::shell {

/// Nobody is there to answer: each question gets its safe answer, and no file is chosen.
class NoDialogs final : public Dialogs {
  public:
    void tell(QWidget*, const QString&, const QString&) override {}
    int ask(QWidget*, const QString&, const QString&, const QStringList&, int safe) override { return safe; }
    std::optional<QString> askText(QWidget*, const QString&, const QString&) override { return std::nullopt; }
    std::optional<QString> saveFile(QWidget*, const QString&, const QString&, const QString&) override {
        return std::nullopt;
    }
    QStringList openFiles(QWidget*, const QString&, const QString&) override { return {}; }
    void openDocument(QWidget*, const QString&, const QByteArray&) override {}
};

}  // namespace hearth::ui::shell
