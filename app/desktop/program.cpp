// SPDX-License-Identifier: Apache-2.0
#include "desktop/program.h"

#include <QCoreApplication>
#include <QLocale>
#include <QQuickImageProvider>
#include <QQuickStyle>

#include "desktop/sheet_paper.h"

namespace wetfront::ui {
namespace {

/// The pages of the sheet, as image://sheet/<page>/<revision>, and that of the summary,
/// image://sheet/summary/<revision>.
class SheetImages final : public QQuickImageProvider {
public:
    explicit SheetImages(const SessionViewModel& session)
        : QQuickImageProvider{QQuickImageProvider::Image}, session_{session} {}

    QImage requestImage(const QString& id, QSize* size, const QSize& /*requested*/) override {
        const QString which = id.section(QLatin1Char('/'), 0, 0);
        const QImage page =
            which == QLatin1String{"summary"} ? session_.summary_page() : session_.sheet_page(which.toInt());
        *size = page.size();
        return page;
    }

private:
    const SessionViewModel& session_;
};

/// Photos of the visit at hand, as image://photo/<place>; places are those of PhotosViewModel.
class PhotoImages final : public QQuickImageProvider {
public:
    explicit PhotoImages(const SessionViewModel& session)
        : QQuickImageProvider{QQuickImageProvider::Image}, session_{session} {}

    QImage requestImage(const QString& place, QSize* size, const QSize& /*requested*/) override {
        const auto* visit = session_.visit();
        const QImage photo = visit == nullptr ? QImage{} : visit->photos()->photo(place);
        *size = photo.size();
        return photo;
    }

private:
    const SessionViewModel& session_;
};

}  // namespace

void prepare_engine(QQmlApplicationEngine& engine) {
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
}

Program::Program(Store& store, const Clock& clock, Preferences preferences, Awake& awake,
                 const QString& documents, bool demo, Media media)
    : formatter_{UnitSystem::us, QLocale{}}, presses_{clock, nullptr}, session_{{store, clock, formatter_},
                                                                                presses_,
                                                                                awake,
                                                                                sheet_paper(documents),
                                                                                std::move(preferences),
                                                                                demo,
                                                                                std::move(media)} {
    QCoreApplication::instance()->installEventFilter(&presses_);
    prepare_engine(engine_);
    engine_.addImageProvider(QStringLiteral("sheet"), new SheetImages{session_});
    engine_.addImageProvider(QStringLiteral("photo"), new PhotoImages{session_});
    engine_.setInitialProperties({{QStringLiteral("session"), QVariant::fromValue(&session_)}});
    // Queued: the row on which the language was chosen is said again too.
    QObject::connect(
        &session_, &SessionViewModel::languageChanged, &engine_, [this] { engine_.retranslate(); },
        Qt::QueuedConnection);
}

Program::~Program() {
    // The window goes before the session that it shows.
    for (auto* root : engine_.rootObjects()) {
        delete root;
    }
}

bool Program::show() {
    session_.look_for_presses();
    const bool timing = session_.resume_running_visit(TimedIn::latest_marks);
    engine_.load(QUrl{QStringLiteral("qrc:/qt/qml/Wetfront/Wizard/Main.qml")});
    if (window() != nullptr && !timing) {
        // The first picture does not wait for these, and a stopwatch that runs not at all for a copy.
        QObject::connect(
            window(), &QQuickWindow::frameSwapped, &session_,
            [this] {
                const bool nothing_opened = session_.place() == QStringLiteral("houses");
                if (!nothing_opened || !session_.resume_running_visit(TimedIn::all_marks)) {
                    session_.back_up_today();
                }
            },
            static_cast<Qt::ConnectionType>(Qt::QueuedConnection | Qt::SingleShotConnection));
    }
    return window() != nullptr;
}

QQuickWindow* Program::window() const {
    return engine_.rootObjects().isEmpty() ? nullptr
                                           : qobject_cast<QQuickWindow*>(engine_.rootObjects().front());
}

}  // namespace wetfront::ui
