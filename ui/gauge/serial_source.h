// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/gauge/source.h"

#include <QSerialPort>

namespace hearth::ui::gauge {

/// A serial port, or what stands in for one at the other end of a cable or a radio link: eight bits, no
/// parity, one stop bit. Is only listened to.
class SerialSource : public Source {
    Q_OBJECT
  public:
    SerialSource(const QString& port, int speed, exchange::LineMatcher matcher, const Clock& clock);

  protected:
    void open() override;
    void close() override;
    [[nodiscard]] QIODevice* device() override { return &m_port; }

  private:
    void onError(QSerialPort::SerialPortError error);

    QSerialPort m_port;
};

}  // namespace hearth::ui::gauge
