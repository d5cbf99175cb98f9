// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/merging.h"

#include <qpdf/Buffer.hh>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFPageDocumentHelper.hh>
#include <qpdf/QPDFPageObjectHelper.hh>
#include <qpdf/QPDFWriter.hh>

#include <exception>
#include <vector>

namespace hearth::ui::paper {
namespace {

using Object = QPDFObjectHandle;

/// Where a bookmark leads.
struct Bookmark {
    std::string title;
    Object page;
};

/// Appends a PDF's pages; gives the first. What the pages hold is copied, so that the part's bytes may go.
Object appendPages(QPDF& whole, const PdfPart& part) {
    QPDF source;
    source.setSuppressWarnings(true);
    source.setImmediateCopyFrom(true);
    source.processMemoryFile("part", part.pdf.data(), part.pdf.size());
    QPDFPageDocumentHelper pages(whole);
    const std::size_t before = pages.getAllPages().size();
    for (auto& page : QPDFPageDocumentHelper(source).getAllPages()) {
        pages.addPage(page, false);
    }
    return pages.getAllPages().at(before).getObjectHandle();
}

/// A flat outline. Source: ISO 32000-1 (PDF 1.7), 12.3.3, tables 152 and 153.
void addOutline(QPDF& whole, const std::vector<Bookmark>& bookmarks) {
    Object outline = whole.makeIndirectObject(Object::newDictionary());
    std::vector<Object> items;
    items.reserve(bookmarks.size());
    for (std::size_t i = 0; i < bookmarks.size(); ++i) {
        items.push_back(whole.makeIndirectObject(Object::newDictionary()));
    }
    for (std::size_t i = 0; i < bookmarks.size(); ++i) {
        Object item = items[i];
        Object place = Object::newArray();
        place.appendItem(bookmarks[i].page);
        place.appendItem(Object::newName("/Fit"));
        item.replaceKey("/Title", Object::newUnicodeString(bookmarks[i].title));
        item.replaceKey("/Parent", outline);
        item.replaceKey("/Dest", place);
        if (i > 0) {
            item.replaceKey("/Prev", items[i - 1]);
        }
        if (i + 1 < items.size()) {
            item.replaceKey("/Next", items[i + 1]);
        }
    }
    outline.replaceKey("/Type", Object::newName("/Outlines"));
    outline.replaceKey("/First", items.front());
    outline.replaceKey("/Last", items.back());
    outline.replaceKey("/Count", Object::newInteger(static_cast<long long>(items.size())));
    whole.getRoot().replaceKey("/Outlines", outline);
    whole.getRoot().replaceKey("/PageMode", Object::newName("/UseOutlines"));
}

void addHead(QPDF& whole, const MergedHead& head) {
    whole.getRoot().replaceKey("/Lang", Object::newString(head.language));
    Object info = whole.makeIndirectObject(Object::newDictionary());
    info.replaceKey("/Title", Object::newUnicodeString(head.title));
    info.replaceKey("/Creator", Object::newUnicodeString("Hearthledger " HEARTH_VERSION));
    whole.getTrailer().replaceKey("/Info", info);
}

std::string written(QPDF& whole) {
    QPDFWriter writer(whole);
    writer.setOutputMemory();
    writer.setDeterministicID(true);
    writer.setObjectStreamMode(qpdf_o_disable);
    writer.write();
    const auto buffer = writer.getBufferSharedPointer();
    return {reinterpret_cast<const char*>(buffer->getBuffer()), buffer->getSize()};
}

}  // namespace

Result<std::string> mergePdfs(const MergedHead& head, const NextPdf& next) {
    std::string at = head.title;  // what was being worked on when it failed
    try {
        QPDF whole;
        whole.emptyPDF();
        std::vector<Bookmark> bookmarks;
        while (true) {
            const auto part = next();
            if (!part) {
                return tl::unexpected<Error>(part.error());
            }
            if (!*part) {
                break;
            }
            at = (*part)->bookmark;
            bookmarks.push_back({at, appendPages(whole, **part)});
        }
        at = head.title;
        if (bookmarks.empty()) {
            return fail(ErrorCode::PdfNotWritten, {at, "no pages"});
        }
        addOutline(whole, bookmarks);
        addHead(whole, head);
        return written(whole);
    } catch (const std::exception& problem) {  // libqpdf's own, for what is no PDF
        return fail(ErrorCode::PdfNotWritten, {at, problem.what()});
    }
}

}  // namespace hearth::ui::paper
