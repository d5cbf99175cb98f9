// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/pdf_language.h"

#include <gtest/gtest.h>

namespace hearth::ui::paper {
namespace {

/// As small as a PDF of the writer's form can be; the offsets are right.
QByteArray smallPdf() {
    QByteArray pdf = "%PDF-1.4\n1 0 obj\n<<\n/Type /Catalog\n/Pages 2 0 R\n>>\nendobj\n";
    const auto second = pdf.size();
    pdf += "2 0 obj\n<<\n/Type /Pages\n/Kids []\n/Count 0\n>>\nendobj\n";
    const auto table = pdf.size();
    pdf += "xref\n0 3\n0000000000 65535 f \n0000000009 00000 n \n" +
           QByteArray::number(second).rightJustified(10, '0') +
           " 00000 n \ntrailer\n<<\n/Size 3\n/Root 1 0 R\n>>\nstartxref\n" + QByteArray::number(table) +
           "\n%%EOF\n";
    return pdf;
}

TEST(PdfLanguage, StandsInTheCatalogueAndTheReferencesStillLead) {
    QByteArray pdf = smallPdf();
    ASSERT_TRUE(nameLanguage(pdf, "cy"));
    EXPECT_TRUE(pdf.contains("/Type /Catalog\n/Lang (cy)\n/Pages"));
    const auto table = pdf.indexOf("xref\n0 3");
    EXPECT_TRUE(pdf.contains("startxref\n" + QByteArray::number(table) + "\n"));
    const auto first = pdf.mid(table + 9 + 20, 10).toLongLong();
    const auto second = pdf.mid(table + 9 + 40, 10).toLongLong();
    EXPECT_TRUE(pdf.mid(first).startsWith("1 0 obj"));
    EXPECT_TRUE(pdf.mid(second).startsWith("2 0 obj"));
}

TEST(PdfLanguage, ChangesNothingThatIsNotBuiltAsExpected) {
    const QByteArray whole = smallPdf();
    const auto expectRefused = [](QByteArray pdf, const QByteArray& language) {
        const QByteArray before = pdf;
        EXPECT_FALSE(nameLanguage(pdf, language)) << pdf.constData();
        EXPECT_EQ(pdf, before);
    };
    expectRefused(whole, "");
    expectRefused(whole, "cy)/X(");
    expectRefused("no PDF", "cy");
    expectRefused(QByteArray(whole).replace("/Catalog", "/Catalox"), "cy");
    expectRefused(QByteArray(whole).replace("startxref", "startxxxx"), "cy");
    expectRefused(QByteArray(whole).replace("xref\n0 3", "xref\n0 9"), "cy");
    expectRefused(QByteArray(whole).replace("startxref\n", "startxref\n9"), "cy");
}

}  // namespace
}  // namespace hearth::ui::paper
