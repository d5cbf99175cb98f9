// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/paper/programs.h"

#include <QProcess>
#include <QRegularExpression>

namespace hearth::testing {

Ran run(const QString& program, const QStringList& arguments) {
    QProcess process;
    process.start(program, arguments);
    Ran ran;
    ran.started = process.waitForStarted(20000);
    if (ran.started && process.waitForFinished(120000)) {
        ran.exitCode = process.exitCode();
    }
    ran.out = process.readAllStandardOutput();
    ran.err = process.readAllStandardError();
    return ran;
}

namespace {

QString preflightWith(const QStringList& what) {
    QStringList jars;
    for (const char* jar : {"preflight", "xmpbox", "pdfbox2", "fontbox2", "commons-logging", "commons-io",
                            "javax.activation", "jaxb-api"}) {
        jars << QStringLiteral("/usr/share/java/") + QString::fromLatin1(jar) + QStringLiteral(".jar");
    }
    const QStringList started{QStringLiteral("-cp"), jars.join(u':'),
                              QStringLiteral("org.apache.pdfbox.preflight.Validator_A1b")};
    const Ran ran = run(QStringLiteral("java"), started + what);
    return QString::fromUtf8(ran.out) + (ran.exitCode == 0 ? QString() : QString::fromUtf8(ran.err));
}

}  // namespace

QString preflight(const QString& path) {
    return preflightWith({path});
}

QString preflightAll(const QString& folder) {
    return preflightWith({QStringLiteral("group"), folder});
}

QString pdfText(const QString& path, int page) {
    QStringList arguments{QStringLiteral("-raw"), QStringLiteral("-enc"), QStringLiteral("UTF-8")};
    if (page > 0) {
        arguments << QStringLiteral("-f") << QString::number(page) << QStringLiteral("-l")
                  << QString::number(page);
    }
    return QString::fromUtf8(run(QStringLiteral("pdftotext"), arguments << path << QStringLiteral("-")).out);
}

QByteArray withoutTimes(const QByteArray& pdf) {
    QString text = QString::fromLatin1(pdf);
    for (const char* pattern : {"\\(D:[0-9]{14}[^)]*\\)", "[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9:.+Z-]+",
                                "/ID \\[[^\\]]*\\]", "uuid:[0-9a-fA-F{}-]+"}) {
        text.replace(QRegularExpression(QString::fromLatin1(pattern)), QStringLiteral("?"));
    }
    return text.toLatin1();
}

}  // namespace hearth::testing
