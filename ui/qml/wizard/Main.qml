// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme
import Wetfront.ViewModels

// The window: the line on top, the place one is at, and the panels that any page opens.
Window {
    id: window

    required property SessionViewModel session
    readonly property VisitViewModel visit: session.visit
    readonly property bool timing: visit !== null && visit.step === 2
    readonly property bool proving: visit !== null && visit.step === 7

    width: Theme.windowWidth
    height: Theme.windowHeight
    visible: true
    color: Theme.ground
    title: session.demo ? qsTr("Wetfront, demo: nothing is kept") : qsTr("Wetfront")

    Binding {
        target: Theme
        property: "mode"
        value: window.session.theme
    }
    Binding {
        target: Theme
        property: "pixelsPerMm"
        value: window.Screen.pixelDensity
    }

    onClosing: close => close.accepted = session.mayClose()

    Connections {
        target: window.session
        // Leaving keeps everything: each entry is stored as it is made.
        function onLeaveAsked(question: string, detail: string, closing: bool): void {
            leavePanel.setSource("qrc:/qt/qml/Wetfront/Wizard/LeavePanel.qml", {
                session: window.session,
                question: question,
                detail: detail,
                closing: closing
            });
        }
        function onCloseNow(): void {
            window.close();
        }
        // What the view models say is not said again by itself.
        function onLanguageChanged(): void {
            page.source = "";
            window.showPlace();
        }
    }

    // A page is loaded when one goes there: the first frame does not wait for what it does not show.
    readonly property string place: session.place
    onPlaceChanged: showPlace()
    Component.onCompleted: showPlace()
    function showPlace(): void {
        if (place === "visit")
            page.setSource("qrc:/qt/qml/Wetfront/Wizard/VisitPage.qml", {
                session: session,
                visit: session.visit
            });
        else if (place === "template")
            page.setSource("qrc:/qt/qml/Wetfront/Preferences/TemplatePage.qml", {
                session: session,
                described: session.described
            });
        else if (place === "templates")
            page.setSource("qrc:/qt/qml/Wetfront/Preferences/TemplatesPage.qml", {
                session: session
            });
        else if (place === "copies")
            page.setSource("qrc:/qt/qml/Wetfront/Preferences/CopiesPage.qml", {
                session: session
            });
        else if (place === "bundles")
            page.setSource("qrc:/qt/qml/Wetfront/Preferences/BundlesPage.qml", {
                session: session
            });
        else if (place === "sheets")
            page.setSource("qrc:/qt/qml/Wetfront/Sheet/SheetsPage.qml", {
                session: session
            });
        else if (place === "removed")
            page.setSource("qrc:/qt/qml/Wetfront/History/RemovedPage.qml", {
                session: session
            });
        else
            page.setSource(place === "house" ? "qrc:/qt/qml/Wetfront/History/HousePage.qml" : "qrc:/qt/qml/Wetfront/History/HousesPage.qml", {
                session: session
            });
    }

    function instruction(): string {
        if (place === "templates")
            return qsTr("Setting templates: one for each controller");
        if (place === "template")
            return qsTr("Setting template: %1").arg(session.described?.name ?? "");
        if (place === "copies")
            return qsTr("Copies of the records");
        if (place === "bundles")
            return qsTr("Records to and from other machines");
        if (place === "sheets")
            return qsTr("Sheets of many visits: print or hand out");
        if (place === "removed")
            return qsTr("Removed: out of sight, and kept");
        if (visit === null)
            return place === "house" ? qsTr("%1: its banks and visits").arg(session.houseName) : qsTr("Choose a house");
        if (timing)
            return visit.stopwatch.instruction;
        return proving ? visit.proof.instruction : Sentence.fill(qsTr("%1, %2: %3"), [visit.houseName, visit.stepTitle, visit.stepNote]);
    }

    ColumnLayout {
        anchors.fill: parent
        spacing: 0

        TopLine {
            text: window.session.readOnly ? qsTr("Read only. %1").arg(window.instruction()) : window.instruction()
            note: window.visit?.entryUndo.outcome ?? ""
            pumpOffText: window.session.pumpOffText
            pumpOffUrgent: window.session.pumpOffUrgent
            backVisible: window.session.place !== "houses"
            onBackAsked: window.session.leave()
            Layout.fillWidth: true

            // On the pages where presses have an undo of their own, this one says that it is another.
            EntryUndo {
                visible: window.place === "visit" && undo !== null && undo.offered && window.width > window.height
                undo: window.visit?.entryUndo ?? null
                named: window.timing || window.proving
            }
            ActionButton {
                pictogram: window.session.theme === "night" ? "moon" : window.session.theme === "shade" ? "shade" : "sun"
                Accessible.name: qsTr("Language, units and light")
                onClicked: preferences.setSource("qrc:/qt/qml/Wetfront/Preferences/PreferencesPanel.qml", {
                    session: window.session
                })
            }
        }
        ProblemBanner {
            session: window.session
            Layout.fillWidth: true
        }
        Loader {
            id: page
            focus: true
            Layout.fillWidth: true
            Layout.fillHeight: true
        }
    }

    Loader {
        id: preferences
    }
    Loader {
        id: leavePanel
    }

    Shortcut {
        sequences: ["Escape", "Back", "Alt+Left"]
        enabled: window.session.place !== "houses"
        onActivated: window.session.leave()
    }
}
