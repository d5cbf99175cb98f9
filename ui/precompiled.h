// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Qt classes in common use, so that the window's files compile quickly.
#include <QAbstractItemModel>
#include <QApplication>
#include <QBoxLayout>
#include <QComboBox>
#include <QDate>
#include <QEvent>
#include <QFontMetricsF>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPainter>
#include <QPainterPath>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QString>
#include <QStringList>
#include <QTableView>
#include <QTimer>
#include <QVariant>
#include <QWidget>

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>
