// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.History
import Wetfront.Preferences
import Wetfront.Theme
import Wetfront.ViewModels

// The window: the line on top, the place one is at, and the panels that any page opens.
Window {
    id: window

    required property SessionViewModel session
    readonly property VisitViewModel visit: session.visit
    readonly property bool timing: visit !== null && visit.step === 2
    readonly property string problem: visit !== null && visit.storageProblem.length > 0 ? visit.storageProblem : session.problem

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

    // Leaving a page keeps everything: each entry is stored as it is made. Only a running stopwatch asks first.
    function leave(): void {
        if (visit !== null && visit.stopwatch.running && !visit.frozen)
            confirm.ask({
                question: qsTr("A pump is running on the stopwatch."),
                detail: qsTr("The time goes on and nothing is lost if you leave this visit now."),
                keepText: qsTr("Stay here"),
                doText: qsTr("Leave the page"),
                act: () => session.back()
            });
        else
            session.back();
    }

    onClosing: close => {
        if (visit !== null && visit.stopwatch.running && !visit.frozen && !confirm.closing) {
            close.accepted = false;
            confirm.ask({
                question: qsTr("A pump is running on the stopwatch."),
                detail: qsTr("If you close now, the stopwatch goes on and Wetfront opens here again."),
                keepText: qsTr("Stay here"),
                doText: qsTr("Close Wetfront"),
                act: () => {
                    confirm.closing = true;
                    window.close();
                }
            });
        }
    }

    ColumnLayout {
        anchors.fill: parent
        spacing: 0

        TopLine {
            text: window.visit === null ? (window.session.place === "house" ? qsTr("%1: its banks and visits").arg(window.session.houseName) : qsTr("Choose a house")) : window.timing ? window.visit.stopwatch.instruction : qsTr("%1, %2: %3").arg(window.visit.houseName).arg(window.visit.farmName).arg(window.visit.stepTitle)
            pumpOffText: window.visit !== null ? window.visit.pumpOffText : ""
            pumpOffUrgent: window.visit !== null && window.visit.pumpOffUrgent
            backVisible: window.session.place !== "houses"
            onBackAsked: window.leave()
            Layout.fillWidth: true

            ActionButton {
                pictogram: window.session.theme === "night" ? "moon" : window.session.theme === "shade" ? "shade" : "sun"
                Accessible.name: qsTr("Units and light")
                onClicked: preferences.open()
            }
        }
        Rectangle {
            visible: window.problem.length > 0
            color: Theme.warningTint
            implicitHeight: problemText.implicitHeight + 2 * Theme.gap
            Layout.fillWidth: true
            Accessible.role: Accessible.AlertMessage
            Accessible.name: window.problem
            StyledText {
                id: problemText
                x: Theme.space
                y: Theme.gap
                width: parent.width - 2 * Theme.space
                text: window.problem
                color: Theme.warningInk
                font.bold: true
                Accessible.ignored: true
            }
        }
        // Only the place that one is at exists.
        Item {
            id: place
            Layout.fillWidth: true
            Layout.fillHeight: true

            Repeater {
                model: window.session.place === "houses" ? 1 : 0
                delegate: HousesPage {
                    anchors.fill: place
                    session: window.session
                }
            }
            Repeater {
                model: window.session.place === "house" ? 1 : 0
                delegate: HousePage {
                    anchors.fill: place
                    session: window.session
                }
            }
            Repeater {
                model: window.visit !== null ? 1 : 0
                delegate: VisitPage {
                    anchors.fill: place
                    visit: window.visit
                    pad: numberPad
                    reasons: reasonSheet
                }
            }
        }
    }

    NumberPad {
        id: numberPad
        decimalMark: window.session.decimalMark
    }
    ReasonSheet {
        id: reasonSheet
    }
    ConfirmPanel {
        id: confirm
        property bool closing: false
    }
    PreferencesPanel {
        id: preferences
        session: window.session
    }

    Shortcut {
        sequences: ["Escape", "Back", "Alt+Left"]
        enabled: window.session.place !== "houses"
        onActivated: window.leave()
    }
}
