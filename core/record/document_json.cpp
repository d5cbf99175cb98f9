// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/json_parts.h"
#include "core/record/snapshot.h"

#include <array>
#include <charconv>
#include <set>
#include <stdexcept>
#include <system_error>
#include <utility>

namespace hearth::record {
namespace {

using record::jsonOf;  // those of the header beside those below

using rulebook::Outcome;

constexpr const char* kLetterPaper = "letter";

std::string textOf(double number) {
    std::array<char, 32> buffer{};
    const auto written = std::to_chars(buffer.data(), buffer.data() + buffer.size(), number);
    return {buffer.data(), written.ptr};
}

double numberOf(const Json& json) {
    const auto text = json.get<std::string>();
    double number = 0.0;
    const auto [end, problem] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (problem != std::errc() || end != text.data() + text.size()) {
        throw std::invalid_argument("no number");
    }
    return number;
}

int integerOf(const Json& json) {
    const auto text = json.get<std::string>();
    int number = 0;
    const auto [end, problem] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (problem != std::errc() || end != text.data() + text.size()) {
        throw std::invalid_argument("no integer");
    }
    return number;
}

Outcome outcomeOf(const Json& json) {
    const auto outcome = rulebook::outcomeFromText(json.get<std::string>());
    if (!outcome) {
        throw std::invalid_argument("no outcome");
    }
    return *outcome;
}

template <class Value, class Convert>
Json listOf(const std::vector<Value>& values, Convert convert) {
    Json list = Json::array();
    for (const auto& value : values) {
        list.push_back(convert(value));
    }
    return list;
}

template <class Convert>
auto valuesOf(const Json& list, Convert convert) {
    std::vector<decltype(convert(list))> values;
    for (const auto& value : list) {
        values.push_back(convert(value));
    }
    return values;
}

Json jsonOf(const CaptionedValue& field) {
    return {{"caption", field.caption}, {"lines", field.lines}, {"absent", field.absent}};
}

CaptionedValue fieldOf(const Json& json) {
    return {json.at("caption"), json.at("lines"), json.at("absent")};
}

Json jsonOf(const Column& column) {
    return {{"title", column.title},
            {"align", column.align == Align::Right ? "right" : "left"},
            {"weight", textOf(column.weight)}};
}

Column columnOf(const Json& json) {
    const auto align = json.at("align").get<std::string>() == "right" ? Align::Right : Align::Left;
    return {json.at("title"), align, numberOf(json.at("weight"))};
}

Json jsonOf(const FindingLine& line) {
    return {{"outcome", rulebook::outcomeText(line.outcome)},
            {"title", line.title},
            {"measured", line.measured},
            {"why", line.why},
            {"notes", line.notes},
            {"sources", line.sources}};
}

FindingLine findingOf(const Json& json) {
    return {outcomeOf(json.at("outcome")),
            json.at("title"),
            json.at("measured"),
            json.at("why"),
            json.at("notes"),
            json.at("sources")};
}

Json jsonOf(const Signature& signature) {
    Json json = {{"caption", signature.caption}, {"name", signature.name}, {"detail", signature.detail}};
    // Only where it was drawn, so that a record that is signed by a typed name is what it was before.
    if (!signature.strokes.empty()) {
        json["strokes"] = signature.strokes;
    }
    return json;
}

Signature signatureOf(const Json& json) {
    const auto strokes = json.find("strokes");
    return {json.at("caption"), json.at("name"), json.at("detail"),
            strokes == json.end() ? std::string() : strokes->get<std::string>()};
}

Json jsonOf(const Picture& picture) {
    return {{"of", picture.of},
            {"caption", picture.caption},
            {"digest", picture.digest},
            {"media_type", picture.mediaType}};
}

Picture pictureOf(const Json& json) {
    return {json.at("of"), json.at("caption"), json.at("digest"), json.at("media_type"), {}};
}

Json jsonOf(const Statement& statement) {
    const auto& outcome = statement.outcome;
    return {{"caption", statement.caption},
            {"text", statement.text},
            {"outcome", outcome ? Json(rulebook::outcomeText(*outcome)) : Json(nullptr)},
            {"details", statement.details}};
}

Statement statementOf(const Json& json) {
    const Json& outcome = json.at("outcome");
    return {json.at("caption"), json.at("text"),
            outcome.is_null() ? std::nullopt : std::optional(outcomeOf(outcome)), json.at("details")};
}

Json jsonOf(const WriteField& field) {
    return {{"caption", field.caption},
            {"ticks", field.ticks},
            {"lines", std::to_string(field.lines)},
            {"wide", field.wide}};
}

WriteField writeFieldOf(const Json& json) {
    return {json.at("caption"), json.at("ticks"), integerOf(json.at("lines")), json.at("wide")};
}

constexpr auto kToJson = [](const auto& part) { return jsonOf(part); };

/// One overload for each kind of block; the key "block" says which.
struct BlockToJson {
    Json operator()(const Headline& block) const {
        return {{"block", "headline"},
                {"outcome", rulebook::outcomeText(block.outcome)},
                {"sentence", block.sentence},
                {"details", block.details}};
    }
    Json operator()(const FieldGrid& block) const {
        return {{"block", "fields"},
                {"title", block.title},
                {"columns", std::to_string(block.columns)},
                {"fields", listOf(block.fields, kToJson)}};
    }
    Json operator()(const Table& block) const {
        Json json = {
            {"block", "table"},   {"title", block.title}, {"columns", listOf(block.columns, kToJson)},
            {"rows", block.rows}, {"total", block.total}, {"note", block.note}};
        // Only on a blank, so that a record's table is the same to the byte as before there were blanks.
        if (block.toWrite > 0) {
            json["to_write"] = std::to_string(block.toWrite);
        }
        return json;
    }
    Json operator()(const FindingList& block) const {
        return {{"block", "findings"}, {"title", block.title}, {"findings", listOf(block.findings, kToJson)}};
    }
    Json operator()(const Paragraph& block) const {
        return {
            {"block", "paragraph"}, {"title", block.title}, {"text", block.text}, {"strong", block.strong}};
    }
    Json operator()(const Signatures& block) const {
        return {{"block", "signatures"}, {"signatures", listOf(block.signatures, kToJson)}};
    }
    Json operator()(const Statements& block) const {
        return {{"block", "statements"},
                {"title", block.title},
                {"statements", listOf(block.statements, kToJson)}};
    }
    Json operator()(const Alert& block) const {
        return {{"block", "alert"},         {"outcome", rulebook::outcomeText(block.outcome)},
                {"word", block.word},       {"grade", block.grade},
                {"meaning", block.meaning}, {"to_tick", block.toTick}};
    }
    Json operator()(const LetterHead& block) const {
        return {{"block", "letter_head"},
                {"sender", block.sender},
                {"recipient", block.recipient},
                {"date", block.date},
                {"subject", block.subject}};
    }
    Json operator()(const WriteIn& block) const {
        return {{"block", "write_in"}, {"title", block.title}, {"fields", listOf(block.fields, kToJson)}};
    }
    Json operator()(const Plots& block) const { return record::jsonOf(block); }
    Json operator()(const Pictures& block) const {
        return {{"block", "pictures"}, {"title", block.title}, {"pictures", listOf(block.pictures, kToJson)}};
    }
    Json operator()(const Diagram& block) const { return record::jsonOf(block); }
};

Block headlineOf(const Json& json) {
    return Headline{outcomeOf(json.at("outcome")), json.at("sentence"), json.at("details")};
}

Block fieldGridOf(const Json& json) {
    return FieldGrid{json.at("title"), integerOf(json.at("columns")), valuesOf(json.at("fields"), fieldOf)};
}

Block tableOf(const Json& json) {
    const auto toWrite = json.find("to_write");
    return Table{json.at("title"), valuesOf(json.at("columns"), columnOf),
                 json.at("rows"),  json.at("total"),
                 json.at("note"),  toWrite == json.end() ? 0 : integerOf(*toWrite)};
}

Block findingListOf(const Json& json) {
    return FindingList{json.at("title"), valuesOf(json.at("findings"), findingOf)};
}

Block paragraphOf(const Json& json) {
    return Paragraph{json.at("title"), json.at("text"), json.at("strong")};
}

Block signaturesOf(const Json& json) {
    return Signatures{valuesOf(json.at("signatures"), signatureOf)};
}

Block statementsOf(const Json& json) {
    return Statements{json.at("title"), valuesOf(json.at("statements"), statementOf)};
}

Block alertOf(const Json& json) {
    return Alert{outcomeOf(json.at("outcome")), json.at("word"), json.at("grade"), json.at("meaning"),
                 json.at("to_tick")};
}

Block letterHeadOf(const Json& json) {
    return LetterHead{json.at("sender"), json.at("recipient"), json.at("date"), json.at("subject")};
}

Block writeInOf(const Json& json) {
    return WriteIn{json.at("title"), valuesOf(json.at("fields"), writeFieldOf)};
}

Block plotsBlockOf(const Json& json) {
    return plotsOf(json);
}

Block picturesOf(const Json& json) {
    return Pictures{json.at("title"), valuesOf(json.at("pictures"), pictureOf)};
}

Block diagramBlockOf(const Json& json) {
    return diagramOf(json);
}

Block blockOf(const Json& json) {
    using Reader = Block (*)(const Json&);
    constexpr std::array<std::pair<std::string_view, Reader>, 13> kReaders{{
        {"headline", headlineOf},
        {"fields", fieldGridOf},
        {"table", tableOf},
        {"findings", findingListOf},
        {"paragraph", paragraphOf},
        {"signatures", signaturesOf},
        {"statements", statementsOf},
        {"alert", alertOf},
        {"letter_head", letterHeadOf},
        {"write_in", writeInOf},
        {"plots", plotsBlockOf},
        {"pictures", picturesOf},
        {"diagram", diagramBlockOf},
    }};
    const auto name = json.at("block").get<std::string>();
    for (const auto& [known, read] : kReaders) {
        if (known == name) {
            return read(json);
        }
    }
    throw std::invalid_argument("unknown block");
}

}  // namespace

Json jsonOf(const Document& document) {
    Json json = {
        {"kind", document.kind},
        {"language", document.language},
        {"title", document.title},
        {"subtitle", document.subtitle},
        {"firm", document.firm},
        {"number", document.number},
        {"revision", std::to_string(document.revision)},
        {"issued", document.issued},
        {"banner", document.banner},
        {"caution", document.caution},
        {"page_word", document.pageWord},
        {"revision_word", document.revisionWord},
        {"digest_word", document.digestWord},
        {"supersedes", document.supersedes},
        {"blocks",
         listOf(document.blocks, [](const Block& block) { return std::visit(BlockToJson{}, block); })},
    };
    // Only where there is one, so that a document without a logo is the same to the byte as before there were
    // logos.
    if (document.logo) {
        json["logo"] = {{"digest", document.logo->digest}, {"media_type", document.logo->mediaType}};
    }
    // For the same reason nothing is said of A4.
    if (document.paper == Paper::Letter) {
        json["paper"] = kLetterPaper;
    }
    return json;
}

Document documentOf(const Json& json) {
    Document document;
    document.kind = json.at("kind");
    document.language = json.at("language");
    document.title = json.at("title");
    document.subtitle = json.at("subtitle");
    document.firm = json.at("firm");
    if (const auto logo = json.find("logo"); logo != json.end()) {
        document.logo = Logo{logo->at("digest"), logo->at("media_type"), {}};
    }
    document.number = json.at("number");
    document.revision = integerOf(json.at("revision"));
    document.issued = json.at("issued");
    document.banner = json.at("banner");
    document.caution = json.at("caution");
    document.pageWord = json.at("page_word");
    document.revisionWord = json.at("revision_word");
    document.digestWord = json.at("digest_word");
    document.supersedes = json.at("supersedes");
    document.blocks = valuesOf(json.at("blocks"), blockOf);
    if (const auto paper = json.find("paper"); paper != json.end()) {
        if (*paper != kLetterPaper) {
            throw std::invalid_argument("no paper");
        }
        document.paper = Paper::Letter;
    }
    return document;
}

std::vector<std::string> pictureDigests(const Document& document) {
    std::set<std::string> digests;
    for (const Block& block : document.blocks) {
        if (const auto* pictures = std::get_if<Pictures>(&block)) {
            for (const Picture& picture : pictures->pictures) {
                digests.insert(picture.digest);
            }
        }
    }
    return {digests.begin(), digests.end()};
}

std::string canonicalText(const Json& json) {
    return json.dump(-1, ' ', false, Json::error_handler_t::replace);
}

std::string documentJson(const Document& document) {
    return canonicalText(jsonOf(document));
}

}  // namespace hearth::record
