// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/rulebook/bands_form.h"

#include "core/rulebook/values.h"

#include <cmath>

namespace hearth::ui::rules {

using quantity::Decimal;
using quantity::UnitCode;
using rulebook::Band;
using rulebook::BandSlip;
using words::qstring;

namespace {

constexpr int kFirstRows = 5;
constexpr int kFieldWidth = 150;
constexpr int kFinest = 9;  // decimals that a change of unit may add up to

QString slipWords(BandSlip slip) {
    switch (slip) {
        case BandSlip::NoBands:
            return BandsForm::tr("No band has been entered yet.");
        case BandSlip::VolumeNotRising:
            return BandsForm::tr("This volume is not above the one before it.");
        case BandSlip::DropNotShrinking:
            return BandsForm::tr(
                "A larger volume allows no larger drop: this drop is above the one before it.");
        case BandSlip::NotPositive:
            return BandsForm::tr("Volume and drop have to be more than nothing.");
        case BandSlip::LeakRateOutOfOrder:
            return BandsForm::tr(
                "Volume times drop is far from that of the other bands: look again at both figures.");
    }
    return {};
}

/// In the bands' own unit (m3, mbar), with no more decimals than it takes.
Decimal converted(const Decimal& value, double factor) {
    if (factor == 1.0) {
        return value;
    }
    std::string text = Decimal::rounded(value.toDouble() * factor, kFinest).text();
    while (text.find('.') != std::string::npos && (text.back() == '0' || text.back() == '.')) {
        text.pop_back();
        if (text.find('.') == std::string::npos) {
            break;
        }
    }
    return Decimal::parse(text).value_or(value);
}

double volumeFactor(UnitCode unit) {
    return unit == UnitCode::None ? 1.0 : quantity::volumeUnit(unit).factor / quantity::kCubicMetre.factor;
}

double dropFactor(UnitCode unit) {
    return unit == UnitCode::None ? 1.0 : quantity::pressureUnit(unit).factor / quantity::kMillibar.factor;
}

}  // namespace

BandsForm::BandsForm(const words::Words& words, QWidget* parent)
    : QWidget(parent), m_words(words), m_lines(new QVBoxLayout(this)) {
    setObjectName(QStringLiteral("bandsForm"));
    m_lines->setContentsMargins(0, 0, 0, 0);
    m_lines->setSpacing(look::kGap / 2);
    m_lines->addWidget(shell::softText(tr("One row for each band of the table, smallest volume first. Rows "
                                          "left empty are not kept. Nothing is judged by the "
                                          "table before it is saved as a whole."),
                                       this));
    m_missing = shell::bodyText({}, this);
    m_missing->setInk(look::Role::Fail);
    m_missing->setObjectName(QStringLiteral("bandsProblem"));
    m_missing->hide();
    m_add = new shell::KeyButton(tr("Another row"), shell::ButtonKind::Quiet, this);
    m_add->setObjectName(QStringLiteral("addBandButton"));
    m_lines->addWidget(m_add, 0, Qt::AlignLeft);
    m_lines->addWidget(m_missing);
    connect(m_add, &QPushButton::clicked, this, [this] {
        addRow();
        shell::orderTabs(this);
        shell::focusOn(m_rows.back().volume);
    });
}

void BandsForm::addRow() {
    const auto number = m_rows.size() + 1;
    const QString name = tr("Band %1").arg(number);
    Row row{new QWidget(this), nullptr, nullptr, nullptr, nullptr};
    auto* columns = new QHBoxLayout(row.line);
    columns->setContentsMargins(0, 0, 0, 0);
    columns->setSpacing(2 * look::kGap);
    row.volume = input::makeQuantityEditor(row.line, quantity::UnitFamily::Volume);
    row.volume->setLabel(tr("Volume up to"), name);
    row.volume->setObjectName(QStringLiteral("bandVolume%1").arg(number));
    row.drop = input::makeQuantityEditor(row.line, quantity::UnitFamily::Pressure);
    row.drop->setLabel(tr("Drop allowed"), name);
    row.drop->setObjectName(QStringLiteral("bandDrop%1").arg(number));
    for (auto* editor : {row.volume, row.drop}) {
        editor->setFixedWidth(kFieldWidth);
        columns->addWidget(editor, 0, Qt::AlignTop);
        connect(editor, &input::Editor::committed, this, [this] { check(HalfRows::Wait); });
    }
    auto* beside = new QVBoxLayout;
    beside->addStretch(1);
    row.slip = shell::bodyText({}, row.line);
    row.slip->setObjectName(QStringLiteral("bandSlip%1").arg(number));
    row.meant = new QCheckBox(tr("This is what my copy says"), row.line);
    row.meant->setAccessibleName(tr("Band %1: this is what my copy says").arg(number));
    row.meant->setObjectName(QStringLiteral("bandMeant%1").arg(number));
    row.meant->hide();
    beside->addWidget(row.slip);
    beside->addWidget(row.meant);
    columns->addLayout(beside, 1);
    m_lines->insertWidget(m_lines->indexOf(m_add), row.line);
    row.line->show();  // now: the focus may go there at once
    m_rows.push_back(row);
}

void BandsForm::show(const rulebook::Entry& entry) {
    for (const Row& row : m_rows) {
        delete row.line;
    }
    m_rows.clear();
    const auto* bands = rulebook::bandsOf(entry);
    const std::size_t count = bands == nullptr ? kFirstRows : bands->size() + 1;
    for (std::size_t i = 0; i < count; ++i) {
        addRow();
        if (bands != nullptr && i < bands->size()) {
            m_rows[i].volume->setText(qstring((*bands)[i].upTo.text()));
            m_rows[i].drop->setText(qstring((*bands)[i].allowed.text()));
        }
    }
    m_missing->hide();
    shell::orderTabs(this);
}

void BandsForm::say(Row& row, const QString& sentence, bool refused) {
    row.slip->setInk(refused ? look::Role::Fail : look::Role::LookAgain);
    row.slip->setText(sentence);
    row.volume->setAccessibleDescription(sentence);
    row.refused = refused;
}

std::optional<Band> BandsForm::bandIn(Row& row) {
    const auto volume = Decimal::parse(row.volume->text().toStdString());
    const auto drop = Decimal::parse(row.drop->text().toStdString());
    row.volume->setProblem(volume ? QString() : m_words.error(volume.error()));
    row.drop->setProblem(drop ? QString() : m_words.error(drop.error()));
    if (!volume || !drop) {
        say(row, {}, true);
        return std::nullopt;
    }
    return Band{converted(*volume, volumeFactor(row.volume->unit())),
                converted(*drop, dropFactor(row.drop->unit()))};
}

BandsForm::Typed BandsForm::typed(HalfRows halfRows) {
    Typed typed;
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        Row& row = m_rows[i];
        say(row, {}, false);
        row.doubted = false;
        const bool hasVolume = !row.volume->text().trimmed().isEmpty();
        const bool hasDrop = !row.drop->text().trimmed().isEmpty();
        if ((!hasVolume && !hasDrop) || (hasVolume != hasDrop && halfRows == HalfRows::Wait)) {
            row.volume->setProblem({});
            row.drop->setProblem({});
            continue;
        }
        if (const auto band = bandIn(row)) {
            typed.bands.push_back(*band);
            typed.rows.push_back(i);
        }
    }
    return typed;
}

void BandsForm::check(HalfRows halfRows) {
    const Typed now = typed(halfRows);
    if (!now.bands.empty()) {
        for (const auto& doubt : rulebook::checkBands(now.bands)) {
            Row& row = m_rows[now.rows[doubt.band]];
            const bool onlyDoubted = doubt.slip == BandSlip::LeakRateOutOfOrder;
            row.doubted = row.doubted || onlyDoubted;
            if (!row.refused) {
                say(row, slipWords(doubt.slip), !onlyDoubted);
            }
        }
    }
    for (Row& row : m_rows) {
        const bool asks = row.doubted && !row.refused;
        row.meant->setVisible(asks);
        if (!asks) {
            row.meant->setChecked(
                false);  // a tick stands for the doubt that it was put to, not for a later one
        }
    }
}

std::optional<rulebook::Value> BandsForm::value() {
    check(HalfRows::Refuse);
    m_missing->hide();
    for (Row& row : m_rows) {
        if (row.refused) {
            m_missing->setText(tr("Nothing was saved: a row can't be right as it stands."));
            m_missing->show();
            shell::focusOn(row.volume);
            return std::nullopt;
        }
        if (row.doubted && !row.meant->isChecked()) {
            m_missing->setText(
                tr("Nothing was saved: a row looks odd. Tick it if your copy really says so."));
            m_missing->show();
            row.meant->setFocus(Qt::OtherFocusReason);
            return std::nullopt;
        }
    }
    const Typed now = typed(HalfRows::Refuse);
    check(HalfRows::Refuse);  // typed() has cleared what was said
    if (now.bands.empty()) {
        m_missing->setText(slipWords(BandSlip::NoBands));
        m_missing->show();
        shell::focusOn(m_rows.front().volume);
        return std::nullopt;
    }
    return now.bands;
}

}  // namespace hearth::ui::rules
