// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gauge/network_source.h"

namespace hearth::ui::gauge {

namespace {

constexpr qint64 kNetworkBuffer = 65536;  // then the sender waits

SourceFault faultOf(QAbstractSocket::SocketError error) {
    switch (error) {
        case QAbstractSocket::ConnectionRefusedError:
            return SourceFault::Refused;
        case QAbstractSocket::HostNotFoundError:
            return SourceFault::HostUnknown;
        case QAbstractSocket::RemoteHostClosedError:
            return SourceFault::Closed;
        case QAbstractSocket::SocketAccessError:
            return SourceFault::NotAllowed;
        case QAbstractSocket::SocketTimeoutError:
        case QAbstractSocket::NetworkError:
            return SourceFault::NotThere;
        default:
            return SourceFault::Other;
    }
}

}  // namespace

NetworkSource::NetworkSource(const QString& host, quint16 port, exchange::LineMatcher matcher,
                             const Clock& clock)
    : Source(std::move(matcher), clock), m_host(host), m_port(port) {
    m_socket.setReadBufferSize(kNetworkBuffer);
    connect(&m_socket, &QTcpSocket::connected, this, &NetworkSource::opened);
    connect(&m_socket, &QTcpSocket::readyRead, this, &NetworkSource::readSome);
    connect(&m_socket, &QTcpSocket::errorOccurred, this, &NetworkSource::onError);
}

void NetworkSource::open() {
    m_socket.abort();
    m_socket.connectToHost(m_host, m_port, isAsking() ? QIODevice::ReadWrite : QIODevice::ReadOnly);
}

void NetworkSource::close() {
    m_socket.abort();
}

void NetworkSource::onError(QAbstractSocket::SocketError error) {
    // What the other end had sent before it went is still read.
    while (error == QAbstractSocket::RemoteHostClosedError && state() == SourceState::Live &&
           m_socket.bytesAvailable() > 0) {
        take(m_socket.readAll());
    }
    failed(faultOf(error));
}

}  // namespace hearth::ui::gauge
