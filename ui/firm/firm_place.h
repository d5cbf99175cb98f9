// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/openers.h"
#include "ui/shell/place.h"

namespace hearth::ui::shell {
class Sheet;
}

namespace hearth::ui::firm {

class BackupsPart;
class BinPart;
class EmergencyPart;
class EngineersPart;
class LettersPart;
class LogoPart;
class NumberingPart;
class FirmPart;
class InstrumentsPart;
class KeepingPart;
class NewsPart;
class HolidaysPart;
class PaperPart;
class SigningPart;
class StorePart;

/// The business itself: who it is, its engineers and instruments, where everything is kept and whether it is
/// sound.
class FirmPlace : public shell::Place, public shell::FirmOpener {
    Q_OBJECT
  public:
    explicit FirmPlace(const shell::Context& context, QWidget* parent = nullptr);

    [[nodiscard]] QString title() const override { return tr("Firm"); }
    [[nodiscard]] QString searchHint() const override { return tr("Find instruments"); }
    void refresh() override;
    void commit() override;
    void takeFocus() override;
    void takeFound() override;
    void search(const QString& text) override;
    void openFirm(record::Field field, const std::string& of) override;

  private:
    void build();

    shell::Context m_context;
    shell::Sheet* m_sheet = nullptr;
    FirmPart* m_firm = nullptr;
    LogoPart* m_logo = nullptr;
    NumberingPart* m_numbering = nullptr;
    EngineersPart* m_engineers = nullptr;
    InstrumentsPart* m_instruments = nullptr;
    EmergencyPart* m_emergency = nullptr;
    LettersPart* m_letters = nullptr;
    PaperPart* m_paper = nullptr;
    NewsPart* m_news = nullptr;
    HolidaysPart* m_holidays = nullptr;
    SigningPart* m_signing = nullptr;
    StorePart* m_store = nullptr;
    BackupsPart* m_backups = nullptr;
    KeepingPart* m_keeping = nullptr;
    BinPart* m_bin = nullptr;
};

}  // namespace hearth::ui::firm
