// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gauge/serial_source.h"

namespace hearth::ui::gauge {

namespace {

constexpr qint64 kSerialBuffer = 65536;  // what is not read stays with the system

SourceFault faultOf(QSerialPort::SerialPortError error) {
    switch (error) {
        case QSerialPort::DeviceNotFoundError:
            return SourceFault::NotThere;
        case QSerialPort::PermissionError:
            return SourceFault::NotAllowed;
        case QSerialPort::ResourceError:
        case QSerialPort::ReadError:
            return SourceFault::Unplugged;
        default:
            return SourceFault::Other;
    }
}

}  // namespace

SerialSource::SerialSource(const QString& port, int speed, exchange::LineMatcher matcher, const Clock& clock)
    : Source(std::move(matcher), clock) {
    m_port.setPortName(port);
    m_port.setBaudRate(speed);
    m_port.setReadBufferSize(kSerialBuffer);
    connect(&m_port, &QSerialPort::readyRead, this, &SerialSource::readSome);
    connect(&m_port, &QSerialPort::errorOccurred, this, &SerialSource::onError);
}

void SerialSource::open() {
    if (m_port.open(isAsking() ? QIODevice::ReadWrite : QIODevice::ReadOnly)) {
        opened();
    }
}

void SerialSource::close() {
    if (m_port.isOpen()) {
        m_port.close();
    }
}

void SerialSource::onError(QSerialPort::SerialPortError error) {
    if (error == QSerialPort::NoError || error == QSerialPort::TimeoutError ||
        error == QSerialPort::UnsupportedOperationError) {
        return;
    }
    failed(faultOf(error));
}

}  // namespace hearth::ui::gauge
