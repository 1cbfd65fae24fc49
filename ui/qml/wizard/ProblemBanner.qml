// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme
import Wetfront.ViewModels

// What could not be stored, on every page. Presses that are only on this screen can be tried again, or written elsewhere;
// presses that were written elsewhere can be put into the record.
Rectangle {
    id: banner

    required property SessionViewModel session
    readonly property VisitViewModel visit: session.visit
    readonly property bool waits: visit !== null && visit.waitsForStorage
    readonly property string problem: visit !== null && visit.storageProblem.length > 0 ? visit.storageProblem : session.problem
    property bool choosing: false
    property string written

    onWaitsChanged: {
        choosing = false;
        written = "";
    }

    visible: problem.length > 0 || session.foundPresses.length > 0
    color: Theme.warningTint
    implicitHeight: content.implicitHeight + 2 * Theme.gap
    Accessible.role: Accessible.AlertMessage
    Accessible.name: problem.length > 0 ? problem : session.foundPresses

    ColumnLayout {
        id: content
        x: Theme.space
        y: Theme.gap
        width: banner.width - 2 * Theme.space
        spacing: Theme.gap

        RowLayout {
            visible: banner.problem.length > 0
            spacing: Theme.gap
            Layout.fillWidth: true
            PlainWords {
                text: banner.problem
                color: Theme.warningInk
                font.bold: true
                Accessible.ignored: true
                Layout.fillWidth: true
            }
            ActionButton {
                visible: banner.waits
                focusPolicy: Qt.TabFocus
                text: qsTr("Store now")
                onClicked: banner.visit.storeNow()
            }
            ActionButton {
                visible: banner.waits
                focusPolicy: Qt.TabFocus
                text: banner.choosing ? qsTr("Not elsewhere") : qsTr("Write elsewhere")
                onClicked: banner.choosing = !banner.choosing
            }
        }
        Flow {
            visible: banner.choosing
            spacing: Theme.gap
            Layout.fillWidth: true
            Repeater {
                model: banner.choosing ? banner.session.pressFolders() : []
                delegate: ActionButton {
                    required property string modelData
                    focusPolicy: Qt.TabFocus
                    text: modelData
                    Accessible.name: qsTr("Write to %1").arg(modelData)
                    onClicked: {
                        banner.written = banner.visit.writePresses(modelData);
                        banner.choosing = false;
                    }
                }
            }
        }
        PlainWords {
            visible: text.length > 0
            text: banner.written
            Layout.fillWidth: true
        }
        RowLayout {
            visible: banner.session.foundPresses.length > 0
            spacing: Theme.gap
            Layout.fillWidth: true
            PlainWords {
                text: banner.session.foundPresses
                color: Theme.warningInk
                font.bold: true
                Layout.fillWidth: true
            }
            ActionButton {
                visible: banner.session.foundPressesFit
                text: qsTr("Put them in")
                kind: "primary"
                onClicked: banner.session.takeFoundPresses()
            }
            ActionButton {
                text: qsTr("Later")
                onClicked: banner.session.leaveFoundPresses()
            }
        }
    }
}
