// SPDX-License-Identifier: GPL-3.0-or-later
// Records readings of "N.NN mbar", ten a second, until it is killed.
//
//     record_driver FOLDER    says "N" for each reading once the recorder has it

#include "ui/gauge/recorder.h"

#include <QCoreApplication>

#include <cstdio>

int main(int argc, char** argv) {
    using namespace hearth;
    QCoreApplication application(argc, argv);
    if (argc < 2) {
        return 2;
    }
    const SystemClock clock;
    ui::gauge::Recorder recorder(clock);
    recorder.begin({"driver"}, QString::fromLocal8Bit(argv[1]));
    QTimer beat;
    beat.setTimerType(Qt::PreciseTimer);
    std::int64_t count = 0;
    QObject::connect(&beat, &QTimer::timeout, &beat, [&] {
        ui::gauge::GaugeReading reading;
        reading.line.value = quantity::Decimal(++count, 2);
        reading.line.unit = quantity::UnitCode::Millibar;
        reading.at = clock.elapsed();
        recorder.add(reading);
        std::printf("%lld\n", static_cast<long long>(count));
        std::fflush(stdout);
    });
    beat.start(100);
    return QCoreApplication::exec();
}
