// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QImage>
#include <QObject>
#include <QStringList>
#include <QVariantList>

#include "sheet/sheet.h"
#include "viewmodels/sheet_look.h"
#include "viewmodels/signature_view_model.h"
#include "viewmodels/visit_record.h"

namespace wetfront::ui {

/// The step Sheet: who and with what, open points, pages to look at, print, sign.
class SheetViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by a visit")
    Q_PROPERTY(QStringList persons READ persons NOTIFY changed)          ///< names
    Q_PROPERTY(QStringList personLines READ personLines NOTIFY changed)  ///< name and role
    Q_PROPERTY(QStringList knownPersons READ knownPersons
                   CONSTANT)  ///< of earlier visits: one press instead of typing
    Q_PROPERTY(QStringList instrumentLines READ instrumentLines NOTIFY changed)
    Q_PROPERTY(QStringList knownInstruments READ knownInstruments CONSTANT)
    Q_PROPERTY(QStringList openPoints READ openPoints NOTIFY changed)
    Q_PROPERTY(bool isSigned READ isSigned NOTIFY changed)
    Q_PROPERTY(QString signedBy READ signedBy NOTIFY changed)
    Q_PROPERTY(wetfront::ui::SignatureViewModel* signatures READ signatures CONSTANT)
    // The sheet's reader is not the one who makes it: each of these is chosen apart from the screen's, and
    // kept.
    Q_PROPERTY(QVariantList languages READ languages CONSTANT)                       ///< {value, text}
    Q_PROPERTY(QString language READ language WRITE setLanguage NOTIFY formChanged)  ///< "en", "es"
    Q_PROPERTY(QString units READ units WRITE setUnits NOTIFY formChanged)           ///< "us" or "si"
    Q_PROPERTY(QString paper READ paper WRITE setPaper NOTIFY formChanged)           ///< "letter" or "a4"
    Q_PROPERTY(int pageCount READ pageCount NOTIFY pagesChanged)
    Q_PROPERTY(int pagesRevision READ pagesRevision NOTIFY pagesChanged)
    Q_PROPERTY(QStringList notReady READ notReady NOTIFY
                   changed)  ///< what is open before signing; signing stays possible

    Q_PROPERTY(QString notReadyInShort READ notReadyInShort NOTIFY
                   changed)  ///< the first few of them, for a question

public:
    SheetViewModel(VisitRecord& record, const SheetPaper& paper, std::vector<Person> known_persons,
                   std::vector<Instrument> known_instruments, QObject* parent);

    [[nodiscard]] QStringList persons() const;
    [[nodiscard]] QStringList personLines() const;
    [[nodiscard]] QStringList knownPersons() const;
    [[nodiscard]] QStringList instrumentLines() const;
    [[nodiscard]] QStringList knownInstruments() const;
    [[nodiscard]] QStringList openPoints() const;
    [[nodiscard]] bool isSigned() const { return record_.file().visit.is_signed(); }
    [[nodiscard]] QString signedBy() const;
    [[nodiscard]] SignatureViewModel* signatures() const { return signatures_; }
    [[nodiscard]] QVariantList languages() const { return SheetLook::languages(); }
    [[nodiscard]] QString language() const { return look_.language(); }
    void setLanguage(const QString& code);
    [[nodiscard]] QString units() const { return look_.units(); }
    void setUnits(const QString& name);
    [[nodiscard]] QString paper() const { return look_.paper(); }
    void setPaper(const QString& name);
    [[nodiscard]] int pageCount() const { return static_cast<int>(pages_.size()); }
    [[nodiscard]] int pagesRevision() const { return pages_revision_; }
    [[nodiscard]] QStringList notReady() const;
    [[nodiscard]] QString notReadyInShort() const;
    [[nodiscard]] QImage page(int index) const;
    [[nodiscard]] const SheetLook& look() const { return look_; }
    [[nodiscard]] Result<SheetContent> content(SheetKind kind, int revisions_to_come = 0) const;
    /// As kept, or drawn where none was.
    [[nodiscard]] Result<QByteArray> pdf() const;

    Q_INVOKABLE QString addPerson(const QString& name, const QString& role);
    Q_INVOKABLE void removePerson(int row);
    Q_INVOKABLE QString addInstrument(const QString& name, const QString& lastChecked);
    Q_INVOKABLE void removeInstrument(int row);
    Q_INVOKABLE QString addOpenPoint(const QString& text);
    Q_INVOKABLE void removeOpenPoint(int row);
    /// Draws the pages as they would be printed now.
    Q_INVOKABLE void showPages();
    /// Where it was written, or what went wrong, as one sentence. Of a signed visit, the bytes kept at the
    /// signing; where none were kept (signed by an older version) it is drawn anew.
    Q_INVOKABLE QString savePdf();
    Q_INVOKABLE QString print();
    /// Freezes the visit, signed by that one of its persons and by whoever has drawn a signature, and keeps
    /// its sheet as it is drawn now. What went wrong, or an empty text.
    Q_INVOKABLE QString sign(int person);

signals:
    void changed();
    void pagesChanged();
    void formChanged();

private:
    void follow_look();
    [[nodiscard]] Result<bool> printed() const;
    [[nodiscard]] Result<void> keep_signed();
    QString keep_or_restore(const Visit& before);

    VisitRecord& record_;
    const SheetPaper& paper_;
    SignatureViewModel* signatures_;
    SheetLook look_;
    std::vector<Person> known_persons_;
    std::vector<Instrument> known_instruments_;
    std::vector<QImage> pages_;
    int pages_revision_ = 0;
};

}  // namespace wetfront::ui
