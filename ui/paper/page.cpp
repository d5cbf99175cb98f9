// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/page.h"

namespace hearth::ui::paper {

namespace {

struct Mover {
    QPointF by;
    void operator()(TextItem& item) const {
        item.origin += by;
        item.box.translate(by);
    }
    void operator()(RuleItem& item) const { item.from += by; }
    void operator()(FrameItem& item) const { item.box.translate(by); }
    void operator()(ShapeItem& item) const { item.box.translate(by); }
    void operator()(PictureItem& item) const { item.box.translate(by); }
    void operator()(CodeItem& item) const { item.origin += by; }
    void operator()(LineItem& item) const {
        for (QPointF& point : item.points) {
            point += by;
        }
    }
    void operator()(MarkItem& item) const { item.centre += by; }
};

}  // namespace

Item moved(Item item, QPointF by) {
    std::visit(Mover{by}, item);
    return item;
}

}  // namespace hearth::ui::paper
