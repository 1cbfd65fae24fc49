// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QAbstractListModel>
#include <QStringList>
#include <QVariantMap>
#include <functional>
#include <memory>
#include <vector>

#include "viewmodels/form_model.h"

namespace wetfront::ui {

/// Things of one sort that a house has several of (pumps, banks, timers), each with a form.
class PartsModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by a view model")
    Q_PROPERTY(int count READ count NOTIFY countChanged)

public:
    enum Role {
        TitleRole = Qt::UserRole + 1,
        FormRole,
        MoreRole,     ///< a second form, for whoever opens it
        ResultsRole,  ///< sentences: what is worked out from the entries, and what is missing for it
        PictureRole,  ///< a map for the drawing of the part; empty: nothing to draw
        NewsRole,     ///< a change elsewhere that takeOver() brings in; empty: none
    };

    /// How the parts are reached; each is called on the GUI thread.
    struct Access {
        std::function<std::size_t()> count;
        std::function<QString(std::size_t)> title;
        std::function<std::vector<FormField>(std::size_t)> lines;
        // Where parts are only shown, or have no second form, nothing is worked out or drawn, these are
        // empty.
        std::function<Result<void>()> add{};
        std::function<Result<void>(std::size_t)> remove{};
        std::function<std::vector<FormField>(std::size_t)> more{};
        std::function<QStringList(std::size_t)> results{};
        std::function<QVariantMap(std::size_t)> picture{};
        std::function<QString(std::size_t)> news{};
        std::function<Result<void>(std::size_t)> take_over{};
    };
    PartsModel(const Formatter& formatter, Access access, QObject* parent);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    [[nodiscard]] int count() const { return static_cast<int>(forms_.size()); }

    /// The parts changed: makes the forms anew if their number did, else brings their lines up to date.
    void refresh();

    /// What is wrong, or an empty text.
    Q_INVOKABLE QString add();
    Q_INVOKABLE QString remove(int row);
    Q_INVOKABLE QString takeOver(int row);

signals:
    void countChanged();

private:
    void rebuild();

    const Formatter& formatter_;
    Access access_;
    std::vector<FormModel*> forms_;
    std::vector<FormModel*> more_;
};

}  // namespace wetfront::ui
