// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/firm/firm_place.h"

#include "ui/firm/backups_part.h"
#include "ui/firm/bin_part.h"
#include "ui/firm/emergency_part.h"
#include "ui/firm/engineers_part.h"
#include "ui/firm/files_part.h"
#include "ui/firm/firm_part.h"
#include "ui/firm/holidays_part.h"
#include "ui/firm/instruments_part.h"
#include "ui/firm/keeping_part.h"
#include "ui/firm/letters_part.h"
#include "ui/firm/logo_part.h"
#include "ui/firm/news_part.h"
#include "ui/firm/numbering_part.h"
#include "ui/firm/paper_part.h"
#include "ui/firm/signing_part.h"
#include "ui/firm/store_part.h"
#include "ui/shell/kit.h"

namespace hearth::ui::firm {

FirmPlace::FirmPlace(const shell::Context& context, QWidget* parent) : Place(parent), m_context(context) {
    setObjectName(QStringLiteral("firmPlace"));
}

void FirmPlace::build() {
    auto* around = new QVBoxLayout(this);
    around->setContentsMargins(2 * look::kGap, look::kGap, 2 * look::kGap, 0);
    m_sheet = new shell::Sheet(this);
    around->addWidget(m_sheet);
    m_firm = new FirmPart(m_context, m_sheet);
    m_logo = new LogoPart(m_context, m_sheet);
    m_numbering = new NumberingPart(m_context, m_sheet);
    m_engineers = new EngineersPart(m_context, m_sheet);
    m_instruments = new InstrumentsPart(m_context, m_sheet);
    m_emergency = new EmergencyPart(m_context, m_sheet);
    m_letters = new LettersPart(m_context, m_sheet);
    m_paper = new PaperPart(m_context, m_sheet);
    m_news = new NewsPart(m_context, m_sheet);
    m_holidays = new HolidaysPart(m_context, m_sheet);
    m_signing = new SigningPart(m_context, m_sheet);
    m_store = new StorePart(m_context, m_sheet);
    m_backups = new BackupsPart(m_context, m_sheet);
    m_keeping = new KeepingPart(m_context, m_sheet);
    m_bin = new BinPart(m_context, m_sheet);
    auto* files = new FilesPart(m_context, m_sheet);
    m_sheet->lines()->addWidget(m_firm);
    for (QWidget* part : std::initializer_list<QWidget*>{
             m_logo, m_numbering, m_engineers, m_instruments, m_emergency, m_letters, m_paper, m_news,
             m_holidays, m_signing, m_store, m_backups, m_keeping, files, m_bin}) {
        m_sheet->lines()->addWidget(shell::hairline(m_sheet));
        m_sheet->lines()->addWidget(part);
    }
    m_sheet->lines()->addStretch(1);
}

void FirmPlace::refresh() {
    if (m_sheet == nullptr) {
        build();
    }
    m_firm->refresh();
    m_logo->refresh();
    m_numbering->refresh();
    m_engineers->refresh();
    m_instruments->refresh();
    m_emergency->refresh();
    m_letters->refresh();
    m_paper->refresh();
    m_news->refresh();
    m_holidays->refresh();
    m_signing->refresh();
    m_backups->refresh();
    m_keeping->refresh();
    m_bin->refresh();
    shell::orderTabs(this);
}

void FirmPlace::commit() {
    shell::commitField(this);
}

void FirmPlace::takeFocus() {
    m_firm->takeFocus();
}

void FirmPlace::takeFound() {
    m_instruments->takeFocus();
}

void FirmPlace::search(const QString& text) {
    m_instruments->search(text);
}

void FirmPlace::openFirm(record::Field field, const std::string& of) {
    using record::Field;
    switch (field) {
        case Field::FirmAddress:
            m_firm->takeFocus("line1");
            break;
        case Field::FirmRegistration:
            m_firm->takeFocus("registrationNumber");
            break;
        case Field::EngineerName:
        case Field::EngineerCard:
            m_engineers->takeFocus(of, field == Field::EngineerCard);
            break;
        case Field::InstrumentSerial:
            m_instruments->open(of, "instrumentSerial");
            break;
        case Field::InstrumentCalibration:
            m_instruments->open(of, "calibrationDue");
            break;
        default:
            m_firm->takeFocus();
            break;
    }
}

}  // namespace hearth::ui::firm
