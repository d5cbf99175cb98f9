// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/signatures_box.h"

#include "core/record/signers.h"
#include "tests/ui/support/keys.h"
#include "tests/ui/visit/sheet_bench.h"
#include "ui/shell/kit.h"
#include "ui/visit/signature_pad.h"

#include <gtest/gtest.h>

namespace hearth::ui::visit {
namespace {

using record::RecordKind;
using reg::SignedWay;
using reg::Signer;
using testing::child;
using testing::editor;
using testing::SheetBench;

/// A visit of pipework with everything that its record wants.
class SignaturesBench : public SheetBench {
  public:
    SignaturesBench() {
        fillIn();
        sheet().goTo(PartRef{PartKind::Records});
        settle();
    }
    [[nodiscard]] RecordsPart* records() const {
        return dynamic_cast<RecordsPart*>(sheet().paper()->part(PartRef{PartKind::Records}));
    }
    [[nodiscard]] SignerPanel* panel(Signer signer) const {
        return child<SignaturesBox>(records(), "signatures")->panel(signer);
    }
    [[nodiscard]] const reg::HandSignature* given(Signer signer) const {
        return record::signatureOf(file(), RecordKind::TightnessAndPurge, signer);
    }
    void go(Signer signer, const char* field) const {
        testing::editor(panel(signer), field)->focusTarget()->setFocus(Qt::TabFocusReason);
        settle();
    }
    void draw(Signer signer) const {
        auto* pad = panel(signer)->pad();
        QTest::mousePress(pad, Qt::LeftButton, Qt::NoModifier, {10, 20});
        QTest::mouseRelease(pad, Qt::LeftButton, Qt::NoModifier, {40, 60});
        settle();
    }
};

TEST(SignaturesBox, takesByKeysThatNobodyWasThere) {
    SignaturesBench bench;
    bench.go(Signer::Receiver, "signedWay");
    SheetBench::keys(QStringLiteral("n"));
    SheetBench::settle();
    ASSERT_NE(bench.given(Signer::Receiver), nullptr);
    EXPECT_EQ(bench.given(Signer::Receiver)->way, SignedWay::NotPresent);
    bench.go(Signer::Receiver, "signedCopyLeft");
    SheetBench::line(QStringLiteral("on the table"));
    EXPECT_EQ(bench.given(Signer::Receiver)->copyLeft, "on the table");
    EXPECT_TRUE(bench.panel(Signer::Receiver)->pad()->isHidden());
}

TEST(SignaturesBox, takesByKeysANameForTheSignatureOnPaper) {
    SignaturesBench bench;
    bench.go(Signer::Receiver, "signedWay");
    SheetBench::keys(QStringLiteral("o"));
    SheetBench::settle();
    bench.go(Signer::Receiver, "signedName");
    SheetBench::line(QStringLiteral("M Okafor"));
    ASSERT_NE(bench.given(Signer::Receiver), nullptr);
    EXPECT_TRUE(reg::isSigned(*bench.given(Signer::Receiver)));
    EXPECT_EQ(bench.given(Signer::Receiver)->name, "M Okafor");
}

TEST(SignaturesBox, keepsAStrokeWhenThePenIsLifted) {
    SignaturesBench bench;
    bench.go(Signer::Engineer, "signedWay");
    SheetBench::keys(QStringLiteral("d"));
    SheetBench::settle();
    ASSERT_FALSE(bench.panel(Signer::Engineer)->pad()->isHidden());
    bench.draw(Signer::Engineer);
    const auto kept = testing::need(bench.firm.store->visitFile(bench.visit)).signatures;
    ASSERT_EQ(kept.size(), 1U);
    EXPECT_FALSE(kept[0].strokes.empty());
    // The engineer of the visit is known; who receives a record is not.
    EXPECT_EQ(kept[0].name, bench.file().engineer()->name);
    EXPECT_EQ(kept[0].at, bench.firm.clock.now());
    // Opened again, it stands there as it was.
    bench.open();
    bench.sheet().goTo(PartRef{PartKind::Records});
    SheetBench::settle();
    EXPECT_EQ(bench.panel(Signer::Engineer)->pad()->strokes().size(), 1U);
}

TEST(SignaturesBox, clearsWhatWasGiven) {
    SignaturesBench bench;
    bench.go(Signer::Receiver, "signedWay");
    SheetBench::keys(QStringLiteral("n"));
    SheetBench::settle();
    child<QPushButton>(bench.panel(Signer::Receiver), "clearSignature")->setFocus();
    SheetBench::press(Qt::Key_Space);
    EXPECT_EQ(bench.given(Signer::Receiver), nullptr);
    EXPECT_TRUE(editor(bench.panel(Signer::Receiver), "signedName")->isHidden());
}

// Each record has its own: what was signed once signs no other.
TEST(SignaturesBox, asksAgainForARevision) {
    SignaturesBench bench;
    bench.go(Signer::Engineer, "signedWay");
    SheetBench::keys(QStringLiteral("d"));
    SheetBench::settle();
    bench.draw(Signer::Engineer);
    bench.records()->issue();
    SheetBench::settle();
    ASSERT_EQ(bench.model().records().size(), 1U);
    EXPECT_EQ(bench.given(Signer::Engineer), nullptr);
    EXPECT_TRUE(bench.panel(Signer::Engineer)->pad()->strokes().empty());
    EXPECT_TRUE(bench.panel(Signer::Engineer)->pad()->isHidden());
}

}  // namespace
}  // namespace hearth::ui::visit
