// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/merging.h"

#include "core/record/snapshot.h"

#include <qpdf/Buffer.hh>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFPageDocumentHelper.hh>
#include <qpdf/QPDFPageObjectHelper.hh>
#include <QString>

#include <exception>
#include <map>
#include <vector>

namespace hearth::ui::paper {
namespace {

using Object = QPDFObjectHandle;

/// Where a bookmark leads.
struct Bookmark {
    std::string title;
    int page = 0;
};

std::string textOf(const std::string& utf8) {
    return Object::newUnicodeString(utf8).unparse();
}

/// Copies what the pages of one PDF need, with new numbers.
class PartCopier {
  public:
    /// Streams that were written already, by digest: a firm's logo stands in each of its records.
    using Seen = std::map<std::string, int>;

    PartCopier(PdfStream& out, Seen& seen) : m_out(out), m_seen(seen) {}

    /// The number that the object has in the whole; it is written by and by.
    int numberOf(const Object& object) {
        const auto found = m_numbers.find(object.getObjGen());
        if (found != m_numbers.end()) {
            return found->second;
        }
        const std::string shared = sharedDigest(object);
        if (const auto known = m_seen.find(shared); !shared.empty() && known != m_seen.end()) {
            m_numbers.emplace(object.getObjGen(), known->second);
            return known->second;
        }
        const int number = m_out.reserve();
        m_numbers.emplace(object.getObjGen(), number);
        if (!shared.empty()) {
            m_seen.emplace(shared, number);
        }
        m_toWrite.push_back(object);
        return number;
    }

    /// A page, as a leaf of another tree.
    int writePage(Object page, int parent) {
        const int number = m_out.reserve();
        m_numbers.emplace(page.getObjGen(), number);
        std::string body = "<< ";
        for (const std::string& key : page.getKeys()) {
            if (key != "/Parent") {
                append(body, key, page.getKey(key));
            }
        }
        m_out.write(number, body + "/Parent " + PdfStream::reference(parent) + " >>");
        return number;
    }

    /// All that was met and not written yet, and what that leads to.
    void writeRest() {
        while (!m_toWrite.empty()) {
            const Object object = m_toWrite.back();
            m_toWrite.pop_back();
            m_out.write(m_numbers.at(object.getObjGen()), bodyOf(object));
        }
    }

  private:
    void append(std::string& body, const std::string& key, const Object& value) {
        body += Object::newName(key).unparse() + " " + inlineOf(value) + " ";
    }

    std::string inlineOf(const Object& object) {
        return object.isIndirect() ? PdfStream::reference(numberOf(object)) : bodyOf(object);
    }

    std::string bodyOf(Object object) {
        std::string body;
        if (object.isArray()) {
            body = "[ ";
            for (const Object& one : object.getArrayAsVector()) {
                body += inlineOf(one) + " ";
            }
            return body + "]";
        }
        if (object.isStream()) {
            const auto data = object.getRawStreamData();
            body = "<< ";
            Object dictionary = object.getDict();
            for (const std::string& key : dictionary.getKeys()) {
                if (key != "/Length") {
                    append(body, key, dictionary.getKey(key));
                }
            }
            body += "/Length " + std::to_string(data->getSize()) + " >>\nstream\n";
            body.append(reinterpret_cast<const char*>(data->getBuffer()), data->getSize());
            return body + "\nendstream";
        }
        if (object.isDictionary()) {
            body = "<< ";
            for (const std::string& key : object.getKeys()) {
                append(body, key, object.getKey(key));
            }
            return body + ">>";
        }
        return object.unparseResolved();
    }

    /// Of a picture or a font that leads to nothing else; else empty.
    static std::string sharedDigest(Object object) {
        if (!object.isStream()) {
            return {};
        }
        Object dictionary = object.getDict();
        if (!dictionary.hasKey("/Length1") && !dictionary.getKey("/Subtype").isNameAndEquals("/Image")) {
            return {};
        }
        std::string all;
        for (const std::string& key : dictionary.getKeys()) {
            if (key == "/Length") {
                continue;
            }
            if (dictionary.getKey(key).isIndirect() && dictionary.getKey(key).isStream()) {
                return {};
            }
            all += key + " " + dictionary.getKey(key).unparseResolved() + " ";
        }
        const auto data = object.getRawStreamData();
        all.append(reinterpret_cast<const char*>(data->getBuffer()), data->getSize());
        return record::sha256(all);
    }

    PdfStream& m_out;
    Seen& m_seen;
    std::map<QPDFObjGen, int> m_numbers;
    std::vector<Object> m_toWrite;
};

/// The colour profile that PDF/A asks for (ISO 19005-1, 6.2.2); none where the part is not PDF/A.
std::string profileOf(QPDF& part) {
    Object intents = part.getRoot().getKey("/OutputIntents");
    if (!intents.isArray() || intents.getArrayNItems() != 1) {
        return {};
    }
    Object profile = intents.getArrayItem(0).getKey("/DestOutputProfile");
    if (!profile.isStream()) {
        return {};
    }
    const auto data = profile.getStreamData();
    return {reinterpret_cast<const char*>(data->getBuffer()), data->getSize()};
}

/// "D:20261126101502Z", "D:20261126101502+01'00'"; in XMP "2026-11-26T10:15:02+01:00".
std::string xmpDate(const std::string& date) {
    constexpr std::size_t kSeconds = 16;
    if (date.size() < kSeconds || date.compare(0, 2, "D:") != 0) {
        return {};
    }
    const auto part = [&date](std::size_t at, std::size_t length) { return date.substr(at, length); };
    std::string zone = part(kSeconds, std::string::npos);
    if (zone.size() >= 6) {
        zone = zone.substr(0, 3) + ":" + zone.substr(4, 2);
    }
    return part(2, 4) + "-" + part(6, 2) + "-" + part(8, 2) + "T" + part(10, 2) + ":" + part(12, 2) + ":" +
           part(14, 2) + zone;
}

constexpr const char* kProducer = "Hearthledger " HEARTH_VERSION;

std::string escaped(const std::string& utf8) {
    return QString::fromStdString(utf8).toHtmlEscaped().toStdString();
}

class Merging {
  public:
    Merging(const MergedHead& head, const PdfSink& sink)
        : m_head(head), m_out(sink), m_catalog(m_out.reserve()), m_pages(m_out.reserve()) {}

    void add(const PdfPart& part) {
        QPDF source;
        source.setSuppressWarnings(true);
        source.processMemoryFile("part", part.pdf.data(), part.pdf.size());
        noteArchival(source);
        QPDFPageDocumentHelper(source).pushInheritedAttributesToPage();
        PartCopier copier(m_out, m_seen);
        const int node = m_out.reserve();
        std::string kids;
        int count = 0;
        for (auto& page : QPDFPageDocumentHelper(source).getAllPages()) {
            const int number = copier.writePage(page.getObjectHandle(), node);
            if (count == 0) {
                m_bookmarks.push_back({part.bookmark, number});
            }
            for (const PageBookmark& one : part.more) {
                if (one.page == count && count > 0) {
                    m_bookmarks.push_back({one.title, number});
                }
            }
            ++count;
            kids += PdfStream::reference(number) + " ";
        }
        if (count == 0) {
            throw std::runtime_error("no pages");
        }
        copier.writeRest();
        m_out.write(node, "<< /Type /Pages /Parent " + PdfStream::reference(m_pages) + " /Kids [ " + kids +
                              "] /Count " + std::to_string(count) + " >>");
        m_nodes += PdfStream::reference(node) + " ";
        m_count += count;
    }

    [[nodiscard]] bool isEmpty() const { return m_bookmarks.empty(); }
    [[nodiscard]] const Result<void>& state() const { return m_out.state(); }

    Result<void> finish() {
        m_out.write(m_pages,
                    "<< /Type /Pages /Kids [ " + m_nodes + "] /Count " + std::to_string(m_count) + " >>");
        std::string catalog = "<< /Type /Catalog /Pages " + PdfStream::reference(m_pages) +
                              " /PageMode /UseOutlines /Lang " +
                              Object::newString(m_head.language).unparse() + " /Outlines " +
                              PdfStream::reference(writeOutline());
        if (m_isArchival) {
            catalog += " /OutputIntents [ " + PdfStream::reference(writeIntent()) + " ]";
        }
        const int info = writeInfo();
        catalog += " /Metadata " + PdfStream::reference(writeMetadata()) + " >>";
        m_out.write(m_catalog, catalog);
        return m_out.finish(m_catalog, info);
    }

  private:
    void noteArchival(QPDF& source) {
        const std::string profile = profileOf(source);
        m_profile = isEmpty() ? profile : m_profile;
        // One profile speaks for the colours of all.
        m_isArchival = m_isArchival && !profile.empty() && profile == m_profile;
        const std::string date = source.getTrailer().getKey("/Info").isDictionary()
                                     ? dateIn(source.getTrailer().getKey("/Info"))
                                     : std::string();
        m_newest = std::max(m_newest, date);
    }

    static std::string dateIn(Object info) {
        Object date = info.getKey("/CreationDate");
        return date.isString() ? date.getStringValue() : std::string();
    }

    /// A flat outline. Source: ISO 32000-1 (PDF 1.7), 12.3.3, tables 152 and 153.
    int writeOutline() {
        const int outline = m_out.reserve();
        std::vector<int> items;
        for (std::size_t i = 0; i < m_bookmarks.size(); ++i) {
            items.push_back(m_out.reserve());
        }
        for (std::size_t i = 0; i < m_bookmarks.size(); ++i) {
            std::string body = "<< /Title " + textOf(m_bookmarks[i].title) + " /Parent " +
                               PdfStream::reference(outline) + " /Dest [ " +
                               PdfStream::reference(m_bookmarks[i].page) + " /Fit ]";
            body += i > 0 ? " /Prev " + PdfStream::reference(items[i - 1]) : "";
            body += i + 1 < items.size() ? " /Next " + PdfStream::reference(items[i + 1]) : "";
            m_out.write(items[i], body + " >>");
        }
        m_out.write(outline, "<< /Type /Outlines /First " + PdfStream::reference(items.front()) + " /Last " +
                                 PdfStream::reference(items.back()) + " /Count " +
                                 std::to_string(items.size()) + " >>");
        return outline;
    }

    int writeIntent() {
        const int profile = m_out.reserve();
        m_out.write(profile, "<< /N 3 /Alternate /DeviceRGB /Length " + std::to_string(m_profile.size()) +
                                 " >>\nstream\n" + m_profile + "\nendstream");
        const int intent = m_out.reserve();
        m_out.write(intent,
                    "<< /Type /OutputIntent /S /GTS_PDFA1 /OutputConditionIdentifier (sRGB) /Info (sRGB) "
                    "/RegistryName (http://www.color.org) /DestOutputProfile " +
                        PdfStream::reference(profile) + " >>");
        return intent;
    }

    int writeInfo() {
        const int info = m_out.reserve();
        const std::string date = xmpDate(m_newest).empty()
                                     ? std::string()
                                     : " /CreationDate " + Object::newString(m_newest).unparse();
        m_out.write(info, "<< /Title " + textOf(m_head.title) + " /Creator " + textOf(kProducer) +
                              " /Producer " + textOf(kProducer) + date + " >>");
        return info;
    }

    /// The same as in the information, as XMP (ISO 19005-1, 6.7), and not compressed.
    int writeMetadata() {
        const std::string date = xmpDate(m_newest);
        std::string xmp =
            "<?xpacket begin='\xEF\xBB\xBF' id='W5M0MpCehiHzreSzNTczkc9d'?>\n"
            "<x:xmpmeta xmlns:x='adobe:ns:meta/'>\n"
            "<rdf:RDF xmlns:rdf='http://www.w3.org/1999/02/22-rdf-syntax-ns#'>\n"
            "<rdf:Description xmlns:dc='http://purl.org/dc/elements/1.1/' rdf:about=''><dc:title><rdf:Alt>"
            "<rdf:li xml:lang='x-default'>" +
            escaped(m_head.title) + "</rdf:li></rdf:Alt></dc:title><dc:language><rdf:Bag><rdf:li>" +
            escaped(m_head.language) +
            "</rdf:li></rdf:Bag></dc:language></rdf:Description>\n"
            "<rdf:Description xmlns:xmp='http://ns.adobe.com/xap/1.0/' rdf:about='' xmp:CreatorTool='" +
            std::string(kProducer) + "'" + (date.empty() ? "" : " xmp:CreateDate='" + date + "'") +
            "/>\n"
            "<rdf:Description xmlns:pdf='http://ns.adobe.com/pdf/1.3/' rdf:about='' pdf:Producer='" +
            std::string(kProducer) + "'/>\n";
        if (m_isArchival) {
            xmp +=
                "<rdf:Description xmlns:pdfaid='http://www.aiim.org/pdfa/ns/id/' rdf:about='' "
                "pdfaid:part='1' pdfaid:conformance='B'/>\n";
        }
        xmp += "</rdf:RDF>\n</x:xmpmeta>\n<?xpacket end='w'?>";
        const int metadata = m_out.reserve();
        m_out.write(metadata, "<< /Type /Metadata /Subtype /XML /Length " + std::to_string(xmp.size()) +
                                  " >>\nstream\n" + xmp + "\nendstream");
        return metadata;
    }

    const MergedHead& m_head;
    PdfStream m_out;
    int m_catalog;
    int m_pages;
    PartCopier::Seen m_seen;
    std::vector<Bookmark> m_bookmarks;
    std::string m_nodes;  // of the tree of pages, one for each part
    int m_count = 0;
    std::string m_profile;
    std::string m_newest;  // day on which a part was made
    bool m_isArchival = true;
};

}  // namespace

Result<void> mergePdfs(const MergedHead& head, const NextPdf& next, const PdfSink& sink) {
    std::string at = head.title;  // what was being worked on when it failed
    try {
        Merging whole(head, sink);
        while (whole.state()) {
            const auto part = next();
            if (!part) {
                return tl::unexpected<Error>(part.error());
            }
            if (!*part) {
                break;
            }
            at = (*part)->bookmark;
            whole.add(**part);
        }
        at = head.title;
        if (whole.state() && whole.isEmpty()) {
            return fail(ErrorCode::PdfNotWritten, {at, "no pages"});
        }
        return whole.state() ? whole.finish() : whole.state();
    } catch (const std::exception& problem) {  // libqpdf's own, for what is no PDF
        return fail(ErrorCode::PdfNotWritten, {at, problem.what()});
    }
}

}  // namespace hearth::ui::paper
