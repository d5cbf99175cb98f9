// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/visit/room_series.h"
#include "ui/visit/sheet_field.h"

#include <QWidget>

#include <vector>

class QVBoxLayout;

namespace hearth::ui::shell {
class FlowLayout;
class KeyButton;
class PlotView;
class Text;
}  // namespace hearth::ui::shell

namespace hearth::ui::visit {

/// What was watched of the carbon monoxide in a room, as it is kept with the visit: the newest. Its peak and
/// its readings at a stated interval are offered for the series; none goes there but by a key. Findings rest
/// on the series alone.
class RoomTraceArea : public QWidget {
    Q_OBJECT
  public:
    RoomTraceArea(const SheetContext& context, QWidget* parent);

    /// After judging, and after the file was read again.
    void refresh();
    void setReadOnly(bool readOnly);
    /// To be confirmed, in the order of time.
    struct Offer {
        RoomReading reading;
        bool isHighest = false;
        bool isTimed = false;    // its minutes in the series are known
        bool isEntered = false;  // such a row stands there
    };
    [[nodiscard]] const std::vector<Offer>& offers() const { return m_offers; }
    void confirm(std::size_t offer);
    void confirmAll();

  Q_SIGNALS:
    void said(const QString& sentence);
    /// Fields came or went.
    void stopsChanged();

  private:
    void build();
    [[nodiscard]] const reg::GaugeTrace* kept() const;
    void takeUp();
    void makeOffers();
    void chooseInterval();
    void showOffers();
    void showText();
    [[nodiscard]] QString textOf(const Offer& offer) const;
    [[nodiscard]] QString aboutOffers(const reg::GaugeTrace& trace) const;
    void remove();
    void say(const Result<void>& done);

    SheetContext m_context;
    std::optional<reg::GaugeTraceId> m_shown;
    std::vector<air::CoReading> m_readings;
    std::vector<Offer> m_offers;
    bool m_isReadOnly = false;
    QVBoxLayout* m_lines;
    shell::Text* m_source;
    shell::PlotView* m_plot;
    shell::Text* m_about;
    shell::Text* m_refused;
    input::Editor* m_every;
    shell::FlowLayout* m_offered;
    std::vector<shell::KeyButton*> m_confirm;
    shell::KeyButton* m_all;
    shell::KeyButton* m_remove;
};

}  // namespace hearth::ui::visit
