// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/gauge/source.h"

#include <QTcpSocket>

namespace hearth::ui::gauge {

/// A stream of lines from a host and port of the network. Is only listened to.
class NetworkSource : public Source {
    Q_OBJECT
  public:
    NetworkSource(const QString& host, quint16 port, exchange::LineMatcher matcher, const Clock& clock);

  protected:
    void open() override;
    void close() override;
    [[nodiscard]] QIODevice* device() override { return &m_socket; }

  private:
    void onError(QAbstractSocket::SocketError error);

    QString m_host;
    quint16 m_port;
    QTcpSocket m_socket;
};

}  // namespace hearth::ui::gauge
